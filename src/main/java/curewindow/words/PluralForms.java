package curewindow.words;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.text.PluralRules.PluralType;
import com.ibm.icu.util.ULocale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which forms of a count a text lacks, by the plural rules of CLDR. */
final class PluralForms {

  /**
   * Beyond these whole numbers no language begins a further form that a count of days could need.
   */
  private static final int COUNTED = 200;

  private PluralForms() {}

  /** The names of the forms that the language has for counts and the text does not. */
  static Set<String> lacking(String text, ULocale locale) {
    MessagePattern pattern = new MessagePattern(text);
    Set<String> lacking = new TreeSet<>();
    for (int at = 0; at < pattern.countParts(); at++) {
      Part part = pattern.getPart(at);
      boolean counts = part.getType() == Part.Type.ARG_START && part.getArgType().hasPluralStyle();
      if (counts) {
        boolean ordinal = part.getArgType() == ArgType.SELECTORDINAL;
        Set<String> needed = needed(locale, ordinal ? PluralType.ORDINAL : PluralType.CARDINAL);
        needed.removeAll(selectors(pattern, at));
        lacking.addAll(needed);
      }
    }
    return lacking;
  }

  private static Set<String> needed(ULocale locale, PluralType type) {
    PluralRules rules = PluralRules.forLocale(locale, type);
    return IntStream.rangeClosed(0, COUNTED)
        .mapToObj(rules::select)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The forms that one count has, without those of the counts inside its texts. */
  private static Set<String> selectors(MessagePattern pattern, int start) {
    Set<String> found = new TreeSet<>();
    int end = pattern.getLimitPartIndex(start);
    for (int at = start + 1; at < end; at++) {
      Part part = pattern.getPart(at);
      if (part.getType() == Part.Type.ARG_SELECTOR) {
        found.add(pattern.getSubstring(part));
      } else if (part.getType() == Part.Type.MSG_START) {
        at = pattern.getLimitPartIndex(at);
      }
    }
    return found;
  }
}
