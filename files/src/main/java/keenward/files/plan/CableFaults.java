package keenward.files.plan;

import java.util.Optional;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;

/** Cables that lead back to a supply or to where they start, or have no length. */
final class CableFaults {

  private CableFaults() {}

  static void check(PlanDraft draft) {
    for (Fields cable : draft.section(SitePlanShape.CABLES).values()) {
      Optional<String> from = cable.find(PowerSection.FROM);
      Optional<String> to = cable.find(PowerSection.TO);
      if (to.isPresent() && draft.section(SitePlanShape.SUPPLIES).containsKey(to.get())) {
        draft.fault(
            cable.place(PowerSection.TO),
            QuotedText.of(to.get()) + " is a supply",
            "a junction or device, further from the supply",
            "swap from and to");
      } else if (from.isPresent() && from.equals(to)) {
        draft.fault(
            cable.place(PowerSection.TO),
            "the cable ends where it starts",
            "another junction or device",
            "");
      }
      if (cable
          .fact(PowerSection.LENGTH)
          .find()
          .filter(length -> length.metres() <= 0)
          .isPresent()) {
        draft.fault(
            cable.place(PowerSection.LENGTH),
            "a cable of no length",
            "a length above 0",
            "measure the run, or write unknown");
      }
    }
  }
}
