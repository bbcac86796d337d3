package keenward.files.yaml;

/** A name and its value in a map. */
public record YamlEntry(YamlScalar key, YamlNode value) {

  /** The text of the key. */
  public String name() {
    return key.text();
  }
}
