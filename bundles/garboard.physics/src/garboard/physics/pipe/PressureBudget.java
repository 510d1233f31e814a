// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import java.util.ArrayList;
import java.util.List;

import garboard.quantity.PressureDifference;

/** A sum of pressures whose parts stay visible: what makes up a back pressure, a suction. */
public record PressureBudget(List<Part> parts) {

    public PressureBudget {
        parts = List.copyOf(parts);
    }

    /** One contribution and what it comes from. */
    public record Part(String cause, PressureDifference pressure) {
    }

    public static PressureBudget empty() {
        return new PressureBudget(List.of());
    }

    public PressureBudget plus(String cause, PressureDifference pressure) {
        List<Part> more = new ArrayList<>(parts);
        more.add(new Part(cause, pressure));
        return new PressureBudget(more);
    }

    public PressureDifference total() {
        return PressureDifference.of(parts.stream().mapToDouble(part -> part.pressure().si()).sum());
    }

    /** What is left up to a limit; negative where it is passed. */
    public PressureDifference leftTo(PressureDifference limit) {
        return PressureDifference.of(limit.si() - total().si());
    }
}
