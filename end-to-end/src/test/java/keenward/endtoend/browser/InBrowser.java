package keenward.endtoend.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test class whose tests take a Playwright {@code Page} of their own; `verify --fast` leaves it
 * out.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("browser")
@ExtendWith(PageParameter.class)
public @interface InBrowser {}
