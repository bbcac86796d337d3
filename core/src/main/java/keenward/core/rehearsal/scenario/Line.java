package keenward.core.rehearsal.scenario;

import java.util.ArrayList;
import java.util.List;

/** A line of a script, read word by word. */
final class Line {

  private final List<Token> tokens;
  private final int endColumn;
  private int next;

  private Line(List<Token> tokens, int endColumn) {
    this.tokens = tokens;
    this.endColumn = endColumn;
  }

  /** Takes a line apart at blanks; quotes hold words together, and {@code #} starts a comment. */
  static Line of(String text) {
    List<Token> tokens = new ArrayList<>();
    int column = 1;
    int at = 0;
    while (at < text.length()) {
      int letter = text.codePointAt(at);
      if (letter == '#') {
        break;
      }
      if (isBlank(letter)) {
        at += 1;
        column += 1;
        continue;
      }
      StringBuilder word = new StringBuilder();
      int start = column;
      boolean quoted = letter == '"';
      if (quoted) {
        at += 1;
        column += 1;
      }
      boolean closed = false;
      while (at < text.length() && !closed) {
        letter = text.codePointAt(at);
        if (quoted ? letter == '"' : isBlank(letter) || letter == '"' || letter == '#') {
          closed = true;
        } else {
          refuseControl(letter, column);
          word.appendCodePoint(letter);
          at += Character.charCount(letter);
          column += 1;
        }
      }
      if (quoted) {
        if (!closed) {
          throw new Mistake(start, "a quote is not closed", "\" at the end of the name");
        }
        at += 1;
        column += 1;
      }
      tokens.add(new Token(word.toString(), quoted, start));
    }
    return new Line(tokens, column);
  }

  private static boolean isBlank(int letter) {
    return letter == ' ' || letter == '\t' || letter == '\r';
  }

  private static void refuseControl(int letter, int column) {
    if (Character.isISOControl(letter)) {
      throw new Mistake(column, "a control character", "letters that can be seen");
    }
  }

  boolean isEmpty() {
    return next >= tokens.size();
  }

  int column() {
    return isEmpty() ? endColumn : tokens.get(next).column();
  }

  boolean isNext(String word) {
    return !isEmpty() && tokens.get(next).is(word);
  }

  /** Takes the next word when it is this one. */
  boolean take(String word) {
    if (isNext(word)) {
      next++;
      return true;
    }
    return false;
  }

  /** Takes the next word, whatever it is. */
  Token takeAny(String expected) {
    if (isEmpty()) {
      throw new Mistake(endColumn, "the line ends here", expected);
    }
    return tokens.get(next++);
  }

  Token peek(String expected) {
    Token token = takeAny(expected);
    next--;
    return token;
  }

  /** The next word must be this one. */
  void need(String word) {
    String expected = "the word \"" + word + "\"";
    Token token = peek(expected);
    if (!token.is(word)) {
      throw new Mistake(token.column(), token.shown(), expected);
    }
    next++;
  }

  /** There must be no more words. */
  void needEnd() {
    if (!isEmpty()) {
      Token token = tokens.get(next);
      throw new Mistake(token.column(), token.shown(), "the end of the line");
    }
  }
}
