package org.flexwright.core.session;

import java.time.Clock;
import java.util.List;
import java.util.Objects;

/**
 * What a store works with.
 *
 * @param thread   the thread projects live on
 * @param clock    the wall clock
 * @param who      who works here, shown to a second opener; may be empty
 * @param program  version of this program, written into the file
 * @param packages packages of details that are here
 */
public record StoreContext(ModelThread thread, Clock clock, String who, String program, List<DetailsPackage> packages) {
    public StoreContext {
        Objects.requireNonNull(thread, "thread");
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(who, "who");
        Objects.requireNonNull(program, "program");
        packages = List.copyOf(packages);
    }
}
