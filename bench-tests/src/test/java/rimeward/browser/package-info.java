/** A real Chromium looks at the page: on invented tunnels of every state, and on the whole service. Skipped where no Chromium is installed. */
@NullMarked
package rimeward.browser;

import org.jspecify.annotations.NullMarked;
