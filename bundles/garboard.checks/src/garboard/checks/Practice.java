// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.List;

/**
 * A set of checks that a record is held against. Contributed by a plug-in through the extension point
 * {@code garboard.checks.practices}; a class with a public constructor without arguments.
 */
public interface Practice {

    /** For ever: words in small letters with hyphens, stored in records. */
    String id();

    /** The name that people read. */
    String name();

    /** To which installations it speaks, and with what authority, in one or two sentences. */
    String appliesTo();

    /** Its checks, in the order of a walk through the installation. */
    List<Check<?>> checks();
}
