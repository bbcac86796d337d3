package keenward.files.shape;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/**
 * The name or number of something that the same file declares. A name that is declared nowhere is a
 * fault of meaning, found once the whole file is read.
 *
 * @param form what such a name looks like
 * @param label what is named, such as "a room"
 * @param declaredAt paths of the declarations, with * for any name, such as {@code /zones/*}
 * @param words words that may stand instead of a name
 */
public record ReferenceShape<T>(
    Shape<T> form, String label, List<String> declaredAt, Set<String> words) implements Shape<T> {

  /** Checks its arguments. */
  public ReferenceShape {
    declaredAt = List.copyOf(declaredAt);
    words = Collections.unmodifiableSet(new LinkedHashSet<>(words));
  }

  /** The same reference, or one of these words. */
  public ReferenceShape<T> orWords(Iterable<String> more) {
    Set<String> all = new LinkedHashSet<>(words);
    more.forEach(all::add);
    return new ReferenceShape<>(form, label, declaredAt, all);
  }

  @Override
  public Optional<T> read(YamlNode node, ReadContext context) {
    if (node instanceof YamlScalar scalar && !scalar.isEmpty()) {
      Optional<T> name = form.read(node, context);
      if (name.isPresent()) {
        context.reference(scalar, this);
      }
      return name;
    }
    return Mismatch.report(node, this, context);
  }

  @Override
  public String expectation() {
    String name = form instanceof TextShape ? "the name of " : "the number of ";
    return name + label + (words.isEmpty() ? "" : " or one of " + String.join(", ", words));
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.SCALAR);
  }
}
