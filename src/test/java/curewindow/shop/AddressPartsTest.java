package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AddressPartsTest {

  @TempDir Path dir;

  /** City, state and ZIP code on one line: US Postal Service Publication 28 (from memory). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18 Tern Yard; Quillhaven, WA 98000 | 18 Tern Yard | Quillhaven | WA | 98000",
        "18 Tern Yard, Quillhaven, WA 98000-1234 | 18 Tern Yard | Quillhaven | WA | 98000-1234",
        "Unit 4, Gull Mews; Tern End, OR, 97000 | Unit 4, Gull Mews | Tern End | OR | 97000",
        "18 Tern Yard; Quillhaven | 18 Tern Yard; Quillhaven | '' | '' | ''",
        "Ternweg 4; 12345 Quillhafen | Ternweg 4; 12345 Quillhafen | '' | '' | ''"
      })
  void anAmericanAddressTellsItsParts(
      String lines, String street, String city, String region, String code) {
    assertEquals(
        new AddressParts(List.of(street.split("; ")), city, region, code, ""),
        AddressParts.of(List.of(lines.split("; "))));
  }

  @Test
  void noAddressHasNoParts() {
    assertEquals(new AddressParts(List.of(), "", "", "", ""), AddressParts.of(List.of()));
  }

  private AddressParts read(String keys) throws IOException {
    TestShops.base(dir);
    Path file = dir.resolve("shop.yaml");
    Files.writeString(file, Files.readString(file) + keys);
    ShopRead read = TestShops.read(dir);
    notes = TestShops.lines(read).stream().filter(l -> l.startsWith("shop.yaml")).toList();
    return read.shop().orElseThrow().addressParts();
  }

  private List<String> notes;

  @Test
  void namedPartsAreTakenOffTheLines() throws IOException {
    assertEquals(
        new AddressParts(List.of("Ternweg 4"), "Quillhafen", "", "02345", "Ternland"),
        read(
            "street: [Ternweg 4, 02345 Quillhafen]\n"
                + "city: Quillhafen\npostal-code: 02345\ncountry: Ternland\n"));
    assertEquals(List.of(), notes);
  }

  @Test
  void aTownMayBeNamedAsItsStateAndItsStreet() throws IOException {
    assertEquals(
        new AddressParts(List.of("1 Ternia Road"), "Ternia", "Ternia", "", ""),
        read("street: ['1 Ternia Road', 'Ternia, Ternia']\ncity: Ternia\nregion: Ternia\n"));
    assertEquals(List.of(), notes);
  }

  @Test
  void aPartThatDoesNotStandThereIsTold() throws IOException {
    assertEquals(
        new AddressParts(List.of("1 Waterside", "Ternia"), "", "", "", ""),
        read("street: [1 Waterside, Ternia]\nregion: WA\n"));
    assertEquals(1, notes.size());
    assertTrue(notes.get(0).contains("region is not in the lines of street: WA"), notes.get(0));
  }
}
