/**
 * What the page shows, as JSON and in words; only computes. {@code adapter.web} serves it. May import {@code core.*}, {@code homie}, {@code
 * alert}, {@code record}, {@code json}, {@code report}, {@code strip}, {@code sizing}, {@code air} and {@code site}.
 */
@NullMarked
package rimeward.page;

import org.jspecify.annotations.NullMarked;
