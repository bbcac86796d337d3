package keenward.core.rules;

import java.util.ArrayList;
import java.util.List;

/**
 * What a rule states about itself; the catalogue is printed from it.
 *
 * @param code letters of the family and a number, such as {@code ENT-01}; never used again for
 *     something else
 * @param fault names the fault, never the cure; lower case with hyphens
 * @param family what it is about
 * @param severity severity of its findings; a finding that matters less says so itself
 * @param status whether it is in force
 * @param since version of this program that brought it
 * @param sources where it comes from; never empty
 * @param purpose what it looks for
 * @param consequence what happens on a site with the fault
 * @param limits what it does not see
 * @param parameters figures that it judges by
 * @param remedy what puts it right
 * @param brokenExample plan text with the fault
 * @param mendedExample the same plan put right
 * @param nearMiss plan text that looks like the fault and is none
 */
public record RuleCard(
    String code,
    String fault,
    RuleFamily family,
    Severity severity,
    RuleStatus status,
    String since,
    List<Source> sources,
    String purpose,
    String consequence,
    String limits,
    List<Parameter> parameters,
    String remedy,
    String brokenExample,
    String mendedExample,
    String nearMiss) {

  public RuleCard {
    sources = List.copyOf(sources);
    parameters = List.copyOf(parameters);
  }

  /** Begins the card of a rule in force. */
  public static Builder of(RuleFamily family, int number, String fault, Severity severity) {
    String code = family.letters() + (number < 10 ? "-0" : "-") + number;
    return new Builder(code, fault, family, severity);
  }

  /** Collects the texts of a card; each is said once. */
  public static final class Builder {
    private final String code;
    private final String fault;
    private final RuleFamily family;
    private final Severity severity;
    private String since = "0.1";
    private final List<Source> sources = new ArrayList<>();
    private String purpose = "";
    private String consequence = "";
    private String limits = "";
    private final List<Parameter> parameters = new ArrayList<>();
    private String remedy = "";
    private String brokenExample = "";
    private String mendedExample = "";
    private String nearMiss = "";

    private Builder(String code, String fault, RuleFamily family, Severity severity) {
      this.code = code;
      this.fault = fault;
      this.family = family;
      this.severity = severity;
    }

    /** The version that brought the rule, where it is not the first. */
    public Builder since(String version) {
      this.since = version;
      return this;
    }

    /** Adds a source. */
    public Builder source(Source source) {
      sources.add(source);
      return this;
    }

    /** What the rule looks for. */
    public Builder purpose(String text) {
      this.purpose = text;
      return this;
    }

    /** What happens on a site with the fault. */
    public Builder consequence(String text) {
      this.consequence = text;
      return this;
    }

    /** What the rule does not see. */
    public Builder limits(String text) {
      this.limits = text;
      return this;
    }

    /** Adds a figure that the rule judges by. */
    public Builder parameter(String name, String value, String unit) {
      parameters.add(new Parameter(name, value, unit));
      return this;
    }

    /** What puts it right. */
    public Builder remedy(String text) {
      this.remedy = text;
      return this;
    }

    /** Plan text with the fault. */
    public Builder broken(String planText) {
      this.brokenExample = planText;
      return this;
    }

    /** The same plan put right. */
    public Builder mended(String planText) {
      this.mendedExample = planText;
      return this;
    }

    /** Plan text that looks like the fault and is none. */
    public Builder nearMiss(String planText) {
      this.nearMiss = planText;
      return this;
    }

    /** The finished card. */
    public RuleCard build() {
      return new RuleCard(
          code,
          fault,
          family,
          severity,
          RuleStatus.IN_FORCE,
          since,
          sources,
          purpose,
          consequence,
          limits,
          parameters,
          remedy,
          brokenExample,
          mendedExample,
          nearMiss);
    }
  }
}
