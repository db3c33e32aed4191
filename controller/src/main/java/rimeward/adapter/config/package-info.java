/**
 * TOML to validated {@link rimeward.site.Site}. The lower half knows nothing of tunnels and serves any settings file, such as the
 * simulator's scenarios: {@link rimeward.adapter.config.TomlTree} holds what files say and where, {@link
 * rimeward.adapter.config.TableReader} turns it into values and gathers every fault, {@link rimeward.adapter.config.Faults} tells them
 * all at once. May import {@code site}.
 */
@NullMarked
package rimeward.adapter.config;

import org.jspecify.annotations.NullMarked;
