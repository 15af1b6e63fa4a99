package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a print shop prints to, by the reference names of the ICC's registry of characterization
 * data, <a href="http://www.color.org">color.org</a>. Only names that stand there may be written
 * into a file that has no color profile of its own.
 */
public enum PrintingCondition {
  /** Offset on coated paper, ISO 12647-2:2004. */
  FOGRA39("FOGRA39", "offset, coated paper, ISO 12647-2:2004"),
  /** Offset on uncoated white paper, ISO 12647-2:2004. */
  FOGRA47("FOGRA47", "offset, uncoated white paper, ISO 12647-2:2004"),
  /** Offset on premium coated paper, ISO 12647-2:2013. */
  FOGRA51("FOGRA51", "offset, premium coated paper, ISO 12647-2:2013"),
  /** Offset on wood-free uncoated white paper, ISO 12647-2:2013. */
  FOGRA52("FOGRA52", "offset, wood-free uncoated white paper, ISO 12647-2:2013"),
  /** Web offset publications. */
  CGATS_TR_001("CGATS TR 001", "web offset publications, United States"),
  /** Publications on paper of grade 3. */
  CGATS_TR_003("CGATS TR 003", "publications, grade 3 paper, United States"),
  /** Publications on paper of grade 5. */
  CGATS_TR_005("CGATS TR 005", "publications, grade 5 paper, United States"),
  /** Commercial offset on coated paper of grade 1. */
  CGATS_TR_006("CGATS TR 006", "commercial offset, grade 1 coated paper, United States"),
  /** Sheet-fed offset on coated paper, Japan. */
  JC200103("JC200103", "sheet-fed offset, coated paper, Japan");

  private final String id;
  private final String description;

  PrintingCondition(String id, String description) {
    this.id = id;
    this.description = description;
  }

  /**
   * The reference name, as the registry has it.
   *
   * @return letters, digits and spaces
   */
  public String id() {
    return id;
  }

  /**
   * What is printed on what.
   *
   * @return English, without a full stop
   */
  public String description() {
    return description;
  }

  /**
   * What is meant where a shop names none.
   *
   * @param units the shop's units
   * @return coated paper: where inches are used, as printed in the United States, else in Europe
   */
  public static PrintingCondition usual(Units units) {
    return units == Units.US ? CGATS_TR_006 : FOGRA39;
  }

  /**
   * The value of a name.
   *
   * @param id the reference name
   * @return the value, or empty where the name is unknown
   */
  public static Optional<PrintingCondition> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(PrintingCondition::id).toList();
  }
}
