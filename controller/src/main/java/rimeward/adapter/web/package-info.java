/**
 * Serves the page of package {@code page}, and takes orders for it. A small HTTP server of our own on two threads that control never waits for;
 * see {@link rimeward.adapter.web.WebServer} for why. May import {@code core.*}, {@code page}, {@code port}, {@code json}, {@code alert}, {@code
 * record}, {@code report}, {@code sizing} and {@code site}.
 */
@NullMarked
package rimeward.adapter.web;

import org.jspecify.annotations.NullMarked;
