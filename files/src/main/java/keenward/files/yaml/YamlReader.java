package keenward.files.yaml;

import java.util.Optional;
import keenward.files.QuotedText;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Reads the strict, small YAML: maps, lists and single values. Anchors, aliases, merge keys, tags,
 * directives, several documents, names given twice and everything beyond {@link YamlLimits} are
 * refused with their place. The parser's events are looked at one by one, so that depth is refused
 * before anything recurses.
 */
public final class YamlReader {

  private final ProblemList problems;
  private final String file;
  private final String text;
  private final TextPlaces places;
  private final TreeBuilder tree;

  private YamlReader(String file, String text, ProblemList problems) {
    this.file = file;
    this.text = text;
    this.problems = problems;
    this.places = new TextPlaces(text);
    this.tree = new TreeBuilder(text, problems);
  }

  /** Reads a file's bytes. Never throws for what they hold. */
  public static YamlReading read(String file, byte[] bytes) {
    ProblemList problems = new ProblemList(file);
    Optional<YamlDocument> document =
        YamlText.decode(bytes, problems)
            .flatMap(text -> new YamlReader(file, text, problems).parse());
    return new YamlReading(document, problems.inFileOrder());
  }

  private Optional<YamlDocument> parse() {
    LoadSettings settings =
        LoadSettings.builder()
            .setUseMarks(true)
            .setParseComments(false)
            .setCodePointLimit(YamlLimits.BYTES + 1)
            .setBufferSize(Math.max(16, text.length() + 1))
            .build();
    try {
      ParserImpl parser = new ParserImpl(settings, new StreamReader(settings, text));
      boolean goOn = true;
      while (goOn && parser.hasNext()) {
        goOn = accept(parser.next());
      }
      if (!goOn) {
        return Optional.empty();
      }
    } catch (MarkedYamlEngineException refused) {
      report(refused);
      return Optional.empty();
    } catch (YamlEngineException refused) {
      problems.add(
          places.span(0, 0),
          "not YAML: " + QuotedText.visible(String.valueOf(refused.getMessage())),
          "a readable YAML text",
          "");
      return Optional.empty();
    }
    Optional<YamlNode> root = tree.root();
    if (root.isEmpty() && problems.isEmpty()) {
      problems.add(places.span(0, 0), "the file is empty", "a map of fields", "");
    }
    return root.map(node -> new YamlDocument(file, text, node));
  }

  private void report(MarkedYamlEngineException refused) {
    Mark mark = refused.getProblemMark().or(refused::getContextMark).orElse(null);
    int offset = mark == null ? 0 : places.offset(mark.getIndex());
    String context = refused.getContext() == null ? "" : " " + refused.getContext();
    problems.add(
        places.span(offset, offset),
        "not YAML: " + QuotedText.visible(refused.getProblem() + context),
        "a readable YAML text",
        "check indentation, colons, quotes and brackets here and just above");
  }

  /** Returns false when what follows cannot be judged. */
  private boolean accept(Event event) {
    Span span = span(event);
    return switch (event.getEventId()) {
      case StreamStart, StreamEnd, DocumentEnd, Comment -> true;
      case DocumentStart -> startDocument((DocumentStartEvent) event, span);
      case Alias -> {
        problems.add(
            span,
            "the alias *" + ((AliasEvent) event).getAlias(),
            "the value itself",
            "write the value out");
        yield tree.add(new YamlRefused(span));
      }
      case Scalar -> {
        ScalarEvent scalar = (ScalarEvent) event;
        boolean fine = properties(scalar, scalar.getTag(), span);
        yield tree.add(scalar(scalar, fine, span));
      }
      case MappingStart, SequenceStart -> {
        CollectionStartEvent start = (CollectionStartEvent) event;
        if (properties(start, start.getTag(), span)) {
          tree.refuseBarePair(event instanceof MappingStartEvent && start.isFlow(), span);
        }
        yield tree.open(event instanceof MappingStartEvent, start.isFlow(), span);
      }
      case MappingEnd, SequenceEnd -> {
        tree.close(span);
        yield true;
      }
    };
  }

  private boolean startDocument(DocumentStartEvent event, Span span) {
    if (tree.root().isPresent()) {
      problems.add(
          span, "a second document starts", "one document", "move it to a file of its own");
      return false;
    }
    if (event.getSpecVersion().isPresent() || !event.getTags().isEmpty()) {
      problems.add(
          places.span(0, 0), "a directive (a line that starts with %)", "none", "remove the line");
    }
    return true;
  }

  private boolean properties(NodeEvent event, Optional<String> tag, Span span) {
    event
        .getAnchor()
        .ifPresent(anchor ->
            problems.add(
                span, "the anchor &" + anchor.getValue(), "a value without anchor", "remove it"));
    tag.ifPresent(name ->
        problems.add(span, "the tag " + QuotedText.of(name), "a value without tag", "remove it"));
    return event.getAnchor().isEmpty() && tag.isEmpty();
  }

  private YamlNode scalar(ScalarEvent event, boolean fine, Span span) {
    String value = event.getValue();
    int length = value.codePointCount(0, value.length());
    if (length > YamlLimits.SCALAR) {
      problems.add(
          span,
          "a value of " + length + " characters",
          "at most " + YamlLimits.SCALAR,
          "shorten it");
      return new YamlRefused(span);
    }
    Optional<Integer> forbidden =
        value.codePoints().filter(c -> c == '\r' || YamlText.isForbidden(c)).boxed().findFirst();
    if (forbidden.isPresent()) {
      problems.add(
          span,
          "a value with the invisible character " + QuotedText.name(forbidden.get()),
          "characters that can be seen",
          "remove the escape");
      return new YamlRefused(span);
    }
    YamlScalar.Style style =
        switch (event.getScalarStyle()) {
          case DOUBLE_QUOTED -> YamlScalar.Style.DOUBLE_QUOTED;
          case SINGLE_QUOTED -> YamlScalar.Style.SINGLE_QUOTED;
          case LITERAL -> YamlScalar.Style.LITERAL;
          case FOLDED -> YamlScalar.Style.FOLDED;
          case PLAIN -> YamlScalar.Style.PLAIN;
          case JSON_SCALAR_STYLE -> throw new IllegalStateException("a style of output only");
        };
    boolean block = style == YamlScalar.Style.LITERAL || style == YamlScalar.Style.FOLDED;
    Span place = block ? withoutBlankEnd(span) : span;
    return fine ? new YamlScalar(value, style, place) : new YamlRefused(place);
  }

  /** The parser counts the blank lines after a block value to it. */
  private Span withoutBlankEnd(Span span) {
    int end = span.end();
    while (end > span.start() && text.charAt(end - 1) <= ' ') {
      end--;
    }
    return new Span(span.start(), end, span.line(), span.column());
  }

  private Span span(Event event) {
    int start = event.getStartMark().map(mark -> places.offset(mark.getIndex())).orElse(0);
    int end = event.getEndMark().map(mark -> places.offset(mark.getIndex())).orElse(start);
    return places.span(start, end);
  }
}
