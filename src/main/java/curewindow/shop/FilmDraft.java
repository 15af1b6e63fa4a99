package curewindow.shop;

import curewindow.shop.YamlWriting.Said;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A film or coating as somebody types it, before it is known whether it is right: everything is
 * text as it was typed, empty where nothing was. {@link FilmText} writes it into films.yaml, which
 * the one reader of catalogues then checks.
 *
 * @param service id of its service
 * @param name the trade name
 * @param material what it is made of
 * @param thickness micrometres
 * @param permeance water permeance, g/m2 per day at 38 degrees Celsius and 90 percent
 * @param vlt visible light transmission of the film alone, percent
 * @param reflectance visible light that it throws back, percent
 * @param metallised {@code true} or {@code false}; empty where it is not said
 * @param finish id of the finish
 */
public record FilmDraft(
    String service,
    String name,
    String material,
    String thickness,
    String permeance,
    String vlt,
    String reflectance,
    String metallised,
    String finish) {

  /** Takes spaces off the ends. */
  public FilmDraft {
    service = service.strip();
    name = name.strip();
    material = material.strip();
    thickness = thickness.strip();
    permeance = permeance.strip();
    vlt = vlt.strip();
    reflectance = reflectance.strip();
    metallised = metallised.strip();
    finish = finish.strip();
  }

  /** The keys and values of its entry, in the order in which people write them. */
  Map<String, Object> tree() {
    Map<String, Object> tree = new LinkedHashMap<>();
    Typed.put(tree, "service", service);
    said(tree, "name", name);
    said(tree, "material", material);
    Typed.put(tree, "thickness", thickness);
    Typed.put(tree, "permeance", permeance);
    Typed.put(tree, "vlt", vlt);
    Typed.put(tree, "reflectance", reflectance);
    boolean flag = metallised.equals("true") || metallised.equals("false");
    Typed.put(tree, "metallised", flag ? (Object) Boolean.valueOf(metallised) : metallised);
    Typed.put(tree, "finish", finish);
    return tree;
  }

  private static void said(Map<String, Object> tree, String key, String text) {
    if (!text.isEmpty()) {
      tree.put(key, new Said(text));
    }
  }
}
