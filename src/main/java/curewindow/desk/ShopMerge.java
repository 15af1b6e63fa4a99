package curewindow.desk;

import curewindow.desk.Merging.Three;
import curewindow.shop.ShopDraft;
import curewindow.shop.ShopDraft.BayDraft;
import curewindow.shop.ShopDraft.SendDraft;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A shop that two people set up or changed at once. */
final class ShopMerge {

  /**
   * What comes of it.
   *
   * @param draft the shop with the values of both
   * @param clashes what both filled in, each in another way; the draft has this one's
   */
  record Merged(ShopDraft draft, List<Merging.Clash> clashes) {}

  private ShopMerge() {}

  /**
   * Puts two forms together.
   *
   * @param base what both began with
   * @param mine as this one typed it
   * @param theirs as the other one left it
   */
  static Merged of(ShopDraft base, ShopDraft mine, ShopDraft theirs) {
    Merging values = new Merging();
    Three<ShopDraft> all = new Three<>(base, mine, theirs);
    ShopDraft draft =
        new ShopDraft(
            values.one("name", all, ShopDraft::name),
            values.one("phone", all, ShopDraft::phone),
            values.one("text-number", all, ShopDraft::textNumber),
            values.one("email", all, ShopDraft::email),
            values.one("street", all, ShopDraft::street),
            values.one("address", all, ShopDraft::address),
            values.one("zone", all, ShopDraft::zone),
            values.one("language", all, ShopDraft::language),
            values.one("place", all, ShopDraft::place),
            opening(values, all.of(ShopDraft::opening)),
            values.one("closed", all, ShopDraft::closed),
            values.one("locale", all, ShopDraft::locale),
            values.one("units", all, ShopDraft::units),
            bay(values, all.of(ShopDraft::bay)),
            send(values, all.of(ShopDraft::send)));
    return new Merged(draft, values.clashes());
  }

  private static Map<String, String> opening(Merging values, Three<Map<String, String>> all) {
    Map<String, String> opening = new LinkedHashMap<>();
    for (String day : ShopDraft.days()) {
      opening.put(day, values.one(ShopForm.hours(day), all, o -> o.getOrDefault(day, "")));
    }
    return opening;
  }

  private static BayDraft bay(Merging values, Three<BayDraft> all) {
    return new BayDraft(
        values.one("bay.temperature", all, BayDraft::temperature),
        values.one("bay.humidity", all, BayDraft::humidity),
        values.one("bay.lamp", all, BayDraft::lamp));
  }

  private static SendDraft send(Merging values, Three<SendDraft> all) {
    return new SendDraft(
        values.one("send.to", all, SendDraft::to),
        values.one("send.host-key", all, SendDraft::hostKey),
        values.one("send.key-file", all, SendDraft::keyFile));
  }
}
