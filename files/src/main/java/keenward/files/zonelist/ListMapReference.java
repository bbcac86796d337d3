package keenward.files.zonelist;

import keenward.files.shape.JsonSchema;
import keenward.files.shape.ReferencePage;

/** The reference page and the JSON Schema of a list map. */
public final class ListMapReference {

  private static final String INTRODUCTION =
      """
      What the words and columns of a technician's own list mean is one YAML file in UTF-8; `import-zones` takes it by `--map FILE`.
      This page is generated from the shape that the reader itself uses; editors can use
      [list-map.schema.json](list-map.schema.json). How a list is read: [your own list](../guide/own-list.md).
      """;

  private ListMapReference() {}

  /** The page as Markdown. */
  public static String page() {
    return ReferencePage.of(ListMapShape.ROOT, "The list map file", INTRODUCTION);
  }

  /** JSON Schema, draft 2020-12. */
  public static String schema() {
    return JsonSchema.of(ListMapShape.ROOT, "urn:keenward:list-map:1", "Keenward list map");
  }
}
