package keenward.papers;

import com.samskivert.mustache.BasicCollector;
import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import com.samskivert.mustache.MustacheParseException;
import java.io.Reader;
import java.io.StringReader;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fills templates. What comes from a plan is escaped unless a template asks for it raw, which only
 * pictures need.
 */
final class Templates {

  private static final Pattern LINE = Pattern.compile("line (\\d+)");

  private final TemplateSource source;
  private final Mustache.Compiler compiler;

  Templates(TemplateSource source) {
    this.source = source;
    compiler =
        Mustache.compiler()
            .withEscaper(Escape::html)
            .emptyStringIsFalse(true)
            .withCollector(new MapsOnly())
            .withLoader(this::open);
  }

  /** A template filled with a view. */
  String fill(String name, View view) {
    try {
      return compiler.compile(open(name)).execute(view);
    } catch (MustacheException.Context lacking) {
      throw new TemplateProblem(
          name, lacking.lineNo, "no value named " + lacking.key + "; see docs/reference/papers.md");
    } catch (MustacheParseException unreadable) {
      String message = String.valueOf(unreadable.getMessage());
      Matcher line = LINE.matcher(message);
      throw new TemplateProblem(name, line.find() ? Integer.parseInt(line.group(1)) : 0, message);
    } catch (MustacheException broken) {
      throw new TemplateProblem(name, 0, String.valueOf(broken.getMessage()));
    } catch (StackOverflowError endless) {
      throw new TemplateProblem(name, 0, "a template includes itself without end");
    }
  }

  /** A style sheet as it is. */
  String style(String name) {
    return text(name);
  }

  private Reader open(String name) {
    return new StringReader(text(name.contains(".") ? name : name + ".html"));
  }

  private String text(String name) {
    return source
        .find(name)
        .orElseThrow(() -> new TemplateProblem(name, 0, "there is no template of this name"));
  }

  /** Looks into maps and lists, and nowhere else: a template can't call a method. */
  private static final class MapsOnly extends BasicCollector {
    @Override
    public <K, V> Map<K, V> createFetcherCache() {
      return new HashMap<>();
    }
  }
}
