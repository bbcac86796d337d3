package keenward.core.plan;

import java.util.List;

/**
 * The site as a whole.
 *
 * @param name how people call it
 * @param reference opaque reference; the only identity on the panel door label
 * @param addressLines postal address
 * @param premises what kind of premises
 * @param company the company that installs and maintains
 * @param contact how to reach that company
 * @param timezone time zone name of the site
 * @param notes anything else
 */
public record Site(
    String name,
    Fact<String> reference,
    List<String> addressLines,
    Fact<PremisesKind> premises,
    Fact<String> company,
    Fact<String> contact,
    Fact<String> timezone,
    Fact<String> notes) {

  public Site {
    addressLines = List.copyOf(addressLines);
  }
}
