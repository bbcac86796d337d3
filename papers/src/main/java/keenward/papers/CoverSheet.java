package keenward.papers;

import java.util.List;
import keenward.core.plan.Regime;
import keenward.core.plan.Site;

/** The cover with its contents. */
final class CoverSheet {

  private CoverSheet() {}

  static View of(PapersInput input, List<Paper> papers) {
    Site site = input.plan().site();
    return new View()
        .text("address", String.join(", ", site.addressLines()))
        .text("reference", Say.factOrBlank(site.reference()))
        .text("company", Say.factOrBlank(site.company()))
        .text("phone", Say.factOrBlank(site.contact()))
        .text("regimes", Say.and(input.plan().regimes().stream().map(Regime::words).toList()))
        .number("zones", input.plan().zones().size())
        .text("findings", FindingsSheet.summary(input))
        .text(
            "entering",
            input.entering() instanceof Entering.ByOrder by && by.proof().proved()
                ? "work order proved by replay, " + by.hash()
                : "entry sheet, unproved")
        .views(
            "papers",
            papers.stream()
                .map(paper ->
                    new View()
                        .text("name", paper.name())
                        .text("title", paper.title())
                        .text("reader", paper.reader()))
                .toList());
  }
}
