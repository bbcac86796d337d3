package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.PremisesKind;
import keenward.core.plan.Site;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** The site as a whole: its plain name, or a map. */
final class SiteSection {

  static final Field<String> NAME =
      required("name", Shapes.text(60), "Mill Cottage Pottery", "How people call it.");
  static final Field<Fact<String>> REFERENCE =
      optional(
          "reference",
          Common.name(),
          "K-0007",
          "A reference that tells a stranger nothing; the only identity on the panel's door label.");
  static final Field<List<String>> ADDRESS =
      optional(
          "address",
          Shapes.oneOrMore(Shapes.text(200)),
          "[4 Mill Lane, Underford]",
          "Postal address, line by line.");
  static final Field<Fact<PremisesKind>> PREMISES =
      optional(
          "premises",
          Shapes.word(PremisesKind.class).orUnknown(),
          "shop-with-dwelling",
          "What kind of premises.");
  static final Field<Fact<String>> COMPANY =
      optional(
          "company",
          Common.line(),
          "Harrow & Finch Alarms",
          "The company that installs and maintains.");
  static final Field<Fact<String>> CONTACT =
      optional("contact", Common.line(), "01000 555 010", "How to reach that company.");
  static final Field<Fact<String>> TIMEZONE =
      optional("timezone", Common.name(), "Europe/Lisbon", "Time zone name of the site.");
  static final Field<Fact<String>> NOTES = optional("notes", Common.note(), "", "Anything else.");

  static final MapShape SHAPE =
      MapShape.of(
              "site",
              "The site as a whole. A plain name will do to begin with.",
              NAME,
              REFERENCE,
              ADDRESS,
              PREMISES,
              COMPANY,
              CONTACT,
              TIMEZONE,
              NOTES)
          .example(
              """
              site:
                name: Mill Cottage Pottery
                reference: K-0007
                address: [4 Mill Lane, Underford]
                premises: shop-with-dwelling
                company: Harrow & Finch Alarms
                contact: 01000 555 010
                timezone: Europe/Lisbon
                notes: |
                  The dog sleeps in the workshop.
                  The river floods the cellar in March.
              """);

  /** The whole value of {@code site:}. */
  static final Shape<Site> VALUE =
      Shapes.either(Shapes.text(60).as(SiteSection::named), SHAPE.as(SiteSection::bind));

  private SiteSection() {}

  private static Site named(String name) {
    return new Site(
        name,
        Fact.missing(),
        List.of(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing());
  }

  private static Site bind(Fields fields) {
    return new Site(
        fields.get(NAME),
        fields.fact(REFERENCE),
        fields.list(ADDRESS),
        fields.fact(PREMISES),
        fields.fact(COMPANY),
        fields.fact(CONTACT),
        fields.fact(TIMEZONE),
        fields.fact(NOTES));
  }
}
