package keenward.core.reporting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * DC-09 frames to bytes and back. Sound bytes whose body cannot be read are the case that a
 * receiver answers with DUH; unsound bytes are left unanswered.
 */
public final class FrameCodec {
  private static final String NO_ADDRESS = "R0L0A0";

  private FrameCodec() {}

  /**
   * Bytes to send.
   *
   * @throws IllegalArgumentException when the content has characters that would break the frame, or
   *     is too long
   */
  public static byte[] encode(Frame frame) {
    return FrameEnvelope.wrap(body(frame));
  }

  /** The frame in received bytes; positions count bytes. */
  public static Decoded<Frame> decode(byte[] bytes) {
    return switch (FrameEnvelope.unwrap(bytes)) {
      case Decoded.Refused<String> refused -> refused.as();
      case Decoded.Value<String> body ->
          switch (read(body.value())) {
            case Decoded.Refused<Frame> refused -> refused.shifted(FrameEnvelope.BODY_FROM);
            case Decoded.Value<Frame> frame -> frame;
          };
    };
  }

  /** The body of a frame, one character a byte. */
  public static String body(Frame frame) {
    StringBuilder body = new StringBuilder();
    body.append('"');
    if (frame.content() instanceof Frame.Encrypted) {
      body.append('*');
    }
    body.append(frame.token()).append('"').append(Digits.decimal(frame.sequence(), 4));
    if (frame.account().isEmpty()) {
      body.append(NO_ADDRESS);
    } else {
      frame.receiver().ifPresent(digits -> body.append('R').append(digits));
      body.append('L').append(frame.prefix()).append('#').append(frame.account());
    }
    body.append('[');
    switch (frame.content()) {
      case Frame.Encrypted encrypted -> body.append(encrypted.hexadecimal());
      case Frame.Plain plain -> {
        body.append(harmless(plain.data())).append(']');
        for (String block : plain.blocks()) {
          body.append('[').append(harmless(block)).append(']');
        }
        plain.time().ifPresent(time -> body.append(time.text()));
      }
    }
    return body.toString();
  }

  /** Reads the body of a frame. */
  public static Decoded<Frame> read(String body) {
    try {
      return Decoded.of(new Reader(body).frame());
    } catch (Refusal refusal) {
      return Decoded.refused(refusal.position, refusal.what, refusal.expected);
    }
  }

  private static String harmless(String text) {
    for (int index = 0; index < text.length(); index++) {
      char character = text.charAt(index);
      if (character < ' ' || character > 0xFF || character == '[' || character == ']') {
        throw new IllegalArgumentException(
            "character " + (index + 1) + " of '" + text + "': expected one byte, no bracket");
      }
    }
    return text;
  }

  /** Left at the first place that does not fit; never leaves this class. */
  private static final class Refusal extends Exception {
    private final int position;
    private final String what;
    private final String expected;

    Refusal(int position, String what, String expected) {
      super(what, null, false, false);
      this.position = position;
      this.what = what;
      this.expected = expected;
    }
  }

  /** Walks along a body once. */
  private static final class Reader {
    private final String body;
    private int at;

    Reader(String body) {
      this.body = body;
    }

    Frame frame() throws Refusal {
      take('"', "a quote before the frame's type");
      boolean encrypted = ahead('*');
      if (encrypted) {
        at++;
      }
      String token = token();
      int sequence = Integer.parseInt(run(4, 4, false, "four digits of sequence number"));
      Optional<String> receiver = Optional.empty();
      String prefix = "0";
      String account = "";
      if (token.equals(Frame.REFUSED) && body.startsWith(NO_ADDRESS, at)) {
        receiver = Optional.of("0");
        at += NO_ADDRESS.length();
      } else {
        if (ahead('R')) {
          at++;
          receiver = Optional.of(run(1, 6, true, "one to six hexadecimal digits of receiver"));
        }
        take('L', "L and the prefix");
        prefix = run(1, 6, true, "one to six hexadecimal digits of prefix");
        take('#', "# and the account");
        account = run(3, 16, true, "three to sixteen hexadecimal digits of account");
      }
      take('[', "[ before the data");
      Frame.Content content = encrypted ? encrypted() : plain();
      return new Frame(token, sequence, receiver, prefix, account, content);
    }

    private String token() throws Refusal {
      int end = body.indexOf('"', at);
      if (end < 0) {
        throw new Refusal(body.length(), "no quote after the frame's type", "a quote");
      }
      for (int index = at; index < end; index++) {
        char character = body.charAt(index);
        if (character != '-'
            && !Digits.isDecimal(character)
            && (character < 'A' || character > 'Z')) {
          throw new Refusal(index, shown(index), "a type of capital letters, digits and hyphens");
        }
      }
      if (end == at) {
        throw new Refusal(at, "no type between the quotes", "a type such as ADM-CID");
      }
      String token = body.substring(at, end);
      at = end + 1;
      return token;
    }

    private Frame.Content encrypted() throws Refusal {
      int from = at;
      for (int index = from; index < body.length(); index++) {
        if (!Digits.isHexadecimal(body.charAt(index))) {
          throw new Refusal(index, shown(index), "hexadecimal digits to the end");
        }
      }
      int digits = body.length() - from;
      // AES blocks are sixteen bytes, two digits a byte.
      if (digits == 0 || digits % 32 != 0) {
        throw new Refusal(from, digits + " digits of encrypted content", "a multiple of 32 digits");
      }
      at = body.length();
      return new Frame.Encrypted(body.substring(from));
    }

    private Frame.Content plain() throws Refusal {
      String data = bracketed();
      List<String> blocks = new ArrayList<>();
      while (ahead('[')) {
        at++;
        String block = bracketed();
        if (block.isEmpty() || block.charAt(0) < 'A' || block.charAt(0) > 'Z') {
          throw new Refusal(
              at - block.length() - 1, "a block without its letter", "a capital letter after [");
        }
        blocks.add(block);
      }
      if (at == body.length()) {
        return new Frame.Plain(data, blocks, Optional.empty());
      }
      return switch (FrameTime.parse(body.substring(at))) {
        case Decoded.Refused<FrameTime> refused ->
            throw new Refusal(at + refused.position(), refused.what(), refused.expected());
        case Decoded.Value<FrameTime> time ->
            new Frame.Plain(data, blocks, Optional.of(time.value()));
      };
    }

    private String bracketed() throws Refusal {
      int end = body.indexOf(']', at);
      if (end < 0) {
        throw new Refusal(body.length(), "no ] after the data", "]");
      }
      for (int index = at; index < end; index++) {
        if (body.charAt(index) < ' ' || body.charAt(index) == '[') {
          throw new Refusal(index, shown(index), "printable characters without [");
        }
      }
      String text = body.substring(at, end);
      at = end + 1;
      return text;
    }

    private String run(int least, int most, boolean hexadecimal, String expected) throws Refusal {
      int end = at;
      while (end < body.length() && end - at < most && digit(body.charAt(end), hexadecimal)) {
        end++;
      }
      if (end - at < least) {
        throw new Refusal(end, shown(end), expected);
      }
      String run = body.substring(at, end);
      at = end;
      return run;
    }

    private static boolean digit(char character, boolean hexadecimal) {
      return hexadecimal ? Digits.isHexadecimal(character) : Digits.isDecimal(character);
    }

    private void take(char character, String expected) throws Refusal {
      if (!ahead(character)) {
        throw new Refusal(at, shown(at), expected);
      }
      at++;
    }

    private boolean ahead(char character) {
      return at < body.length() && body.charAt(at) == character;
    }

    private String shown(int index) {
      if (index >= body.length()) {
        return "the end";
      }
      char character = body.charAt(index);
      return character < ' ' || character > '~'
          ? "byte 0x" + Digits.hexadecimal(character, 2)
          : "'" + character + "'";
    }
  }
}
