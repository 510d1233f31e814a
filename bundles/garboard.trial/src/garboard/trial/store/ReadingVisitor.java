// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

/** Looks at the readings of one channel, one after the other in the order of the log. */
@FunctionalInterface
public interface ReadingVisitor {

    /** One reading: time in ns, value in the SI unit. */
    void reading(long timeNs, double si);
}
