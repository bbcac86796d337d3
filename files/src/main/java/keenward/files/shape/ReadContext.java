package keenward.files.shape;

import java.util.ArrayList;
import java.util.List;
import keenward.files.Problem;
import keenward.files.yaml.ProblemList;
import keenward.files.yaml.Span;
import keenward.files.yaml.YamlScalar;

/**
 * Gathers what a reading finds wrong: faults of structure, which a JSON Schema finds too, and
 * faults of meaning, which it cannot (a name that is declared nowhere, a figure out of range, two
 * facts that exclude each other).
 */
public final class ReadContext {

  private final String file;
  private final ProblemList structure;
  private final ProblemList meaning;
  private final List<PendingReference> references = new ArrayList<>();

  /** A name that has to be declared somewhere in the same file. */
  record PendingReference(YamlScalar scalar, ReferenceShape<?> shape) {}

  ReadContext(String file) {
    this.file = file;
    this.structure = new ProblemList(file);
    this.meaning = new ProblemList(file);
  }

  /** Adds a fault of structure. */
  void structure(Span place, String what, String expected, String remedy) {
    structure.add(place, what, expected, remedy);
  }

  /** Adds a fault of meaning. */
  public void meaning(Span place, String what, String expected, String remedy) {
    meaning.add(place, what, expected, remedy);
  }

  /** Whether further faults of meaning are only counted. */
  boolean isMeaningFull() {
    return meaning.isFull();
  }

  void reference(YamlScalar scalar, ReferenceShape<?> shape) {
    references.add(new PendingReference(scalar, shape));
  }

  List<PendingReference> references() {
    return references;
  }

  /** Whether nothing is wrong so far. */
  public boolean isFine() {
    return structure.isEmpty() && meaning.isEmpty();
  }

  boolean isStructureFine() {
    return structure.isEmpty();
  }

  /** A context of its own, to try one of several shapes. */
  ReadContext trial() {
    return new ReadContext(file);
  }

  /** Takes over everything that a trial found. */
  void adopt(ReadContext trial) {
    trial.structure.inFileOrder().forEach(structure::add);
    trial.meaning.inFileOrder().forEach(meaning::add);
    references.addAll(trial.references);
  }

  /** The faults of structure in the order of the file. */
  public List<Problem> structureProblems() {
    return structure.inFileOrder();
  }

  /** The faults of meaning in the order of the file. */
  public List<Problem> meaningProblems() {
    return meaning.inFileOrder();
  }

  /** All faults in the order of the file, those of the text itself first where places are equal. */
  public List<Problem> problemsAfter(List<Problem> ofTheText) {
    ProblemList all = new ProblemList(file);
    ofTheText.forEach(all::add);
    structure.inFileOrder().forEach(all::add);
    meaning.inFileOrder().forEach(all::add);
    return all.inFileOrder();
  }
}
