package keenward.files.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.files.QuotedText;
import org.jspecify.annotations.Nullable;

/** Builds the tree from one node after another, without recursion, and judges the names of maps. */
final class TreeBuilder {

  private final String text;
  private final ProblemList problems;
  private final Deque<Open> open = new ArrayDeque<>();
  private @Nullable YamlNode root;

  TreeBuilder(String text, ProblemList problems) {
    this.text = text;
    this.problems = problems;
  }

  Optional<YamlNode> root() {
    return Optional.ofNullable(root);
  }

  /** Starts a map or list; false when it lies too deep to go on. */
  boolean open(boolean map, boolean flow, Span span) {
    if (open.size() == YamlLimits.DEPTH) {
      problems.add(
          span,
          "maps and lists nested deeper than " + YamlLimits.DEPTH,
          "at most " + YamlLimits.DEPTH + " levels",
          "check for brackets that are not closed");
      return false;
    }
    open.push(new Open(map, flow, span));
    return true;
  }

  /** Reports a map in flow style without braces, {@code [a: b]}. */
  void refuseBarePair(boolean flowMap, Span span) {
    if (flowMap && text.charAt(span.start()) != '{') {
      problems.add(
          span, "a pair inside [ ]", "a map in braces", "write { name: value } around the pair");
    }
  }

  /** Ends the innermost map or list. */
  void close(Span end) {
    Open finished = open.pop();
    add(finished.finish(end));
  }

  boolean add(YamlNode node) {
    Open parent = open.peek();
    if (parent == null) {
      root = node;
    } else if (!parent.map) {
      parent.items.add(node);
      parent.lastEnd = node.span().end();
    } else if (parent.awaitsKey) {
      parent.key = key(node, parent);
      parent.awaitsKey = false;
    } else {
      if (parent.key != null) {
        parent.entries.add(new YamlEntry(parent.key, node));
      }
      parent.lastEnd = node.span().end();
      parent.awaitsKey = true;
    }
    return true;
  }

  /** The key if it may be one; otherwise the problem is added and the entry left out. */
  private @Nullable YamlScalar key(YamlNode node, Open parent) {
    if (!(node instanceof YamlScalar key)) {
      if (!(node instanceof YamlRefused)) {
        problems.add(node.span(), "a map or list as a name", "a word or a number", "");
      }
      return null;
    }
    String name = key.text();
    int length = name.codePointCount(0, name.length());
    if (key.isPlain() && name.equals("<<")) {
      problems.add(key.span(), "the merge key <<", "the entries themselves", "write them out");
    } else if (key.isEmpty() || name.isBlank()) {
      problems.add(key.span(), "a name without characters", "a word or a number", "");
    } else if (name.indexOf('\n') >= 0) {
      problems.add(key.span(), "a name of several lines", "a name on one line", "");
    } else if (length > YamlLimits.NAME) {
      problems.add(
          key.span(),
          "a name of " + length + " characters",
          "at most " + YamlLimits.NAME,
          "shorten it");
    } else if (!isFollowedByColon(key.span()) || isMarkedByQuestionMark(key.span())) {
      problems.add(
          key.span(),
          "the name " + QuotedText.of(name) + " has no value beside it",
          "name: value",
          "write a colon and a space after the name, or put a text with a comma in quotes");
    } else {
      Span first = parent.names.putIfAbsent(name, key.span());
      if (first == null) {
        return key;
      }
      problems.add(
          key.span(),
          "the name "
              + QuotedText.of(name)
              + " is given twice (first in line "
              + first.line()
              + ")",
          "each name once",
          "rename or remove one of the two");
    }
    return null;
  }

  private boolean isFollowedByColon(Span key) {
    int i = key.end();
    while (i < text.length() && text.charAt(i) == ' ') {
      i++;
    }
    return i < text.length() && text.charAt(i) == ':';
  }

  private boolean isMarkedByQuestionMark(Span key) {
    int i = key.start() - 1;
    while (i >= 0 && text.charAt(i) == ' ') {
      i--;
    }
    return i >= 0 && text.charAt(i) == '?';
  }

  /** A map or list that is still being read. */
  private static final class Open {
    final boolean map;
    final boolean flow;
    final Span span;
    final List<YamlNode> items = new ArrayList<>();
    final List<YamlEntry> entries = new ArrayList<>();
    final Map<String, Span> names = new HashMap<>();
    @Nullable YamlScalar key;
    boolean awaitsKey = true;
    int lastEnd;

    Open(boolean map, boolean flow, Span span) {
      this.map = map;
      this.flow = flow;
      this.span = span;
      this.lastEnd = span.start();
    }

    /**
     * A block ends with its last value: the parser's own mark would take in comments that follow.
     */
    YamlNode finish(Span end) {
      int last = flow ? end.end() : lastEnd;
      Span whole = new Span(span.start(), last, span.line(), span.column());
      return map ? new YamlMap(entries, flow, whole) : new YamlList(items, flow, whole);
    }
  }
}
