package keenward.endtoend.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives a test its page: one browser for all tests, since it takes seconds to start, and a fresh
 * context for each.
 */
final class PageParameter implements ParameterResolver {

  private static final Namespace NAMESPACE = Namespace.create(PageParameter.class);

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
    return parameter.getParameter().getType() == Page.class;
  }

  @Override
  public Page resolveParameter(ParameterContext parameter, ExtensionContext test) {
    Browser browser =
        test.getRoot()
            .getStore(NAMESPACE)
            .computeIfAbsent(OneBrowser.class, key -> OneBrowser.launch(), OneBrowser.class)
            .browser();
    BrowserContext context = browser.newContext();
    test.getStore(NAMESPACE).put(BrowserContext.class, context);
    return context.newPage();
  }
}
