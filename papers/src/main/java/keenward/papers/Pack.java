package keenward.papers;

import java.util.List;

/**
 * The papers of a site.
 *
 * @param papers the papers in the order of the pack
 * @param cover cover with contents, a well-formed fragment of HTML
 * @param index a page with links to the papers, to stand beside their files
 * @param site name of the site
 * @param printed the whole pack as one document for print, page rules left open
 */
public record Pack(List<Paper> papers, String cover, String index, String site, Printed printed) {
  public Pack {
    papers = List.copyOf(papers);
  }

  /** The whole pack as one document for a size of paper. */
  @FunctionalInterface
  public interface Printed {
    /** Well-formed HTML. */
    String on(PaperSize size);
  }
}
