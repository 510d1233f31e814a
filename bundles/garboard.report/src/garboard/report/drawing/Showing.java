// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.Optional;

import garboard.physics.geometry.Attitude;
import garboard.report.Figures;
import garboard.report.drawing.PlacedPart.Circuit;

/**
 * What a sheet shows.
 *
 * @param arrangement the parts and the water
 * @param attitude how the boat lies; its sinkage counts
 * @param about the circuit that the person is working on, where it is one
 * @param chosen id of the part that is chosen, which is named whatever the room
 * @param value whether a value is written beside that part, for which room is left
 * @param figures how quantities are written
 * @param words the language
 */
public record Showing(Arrangement arrangement, Attitude attitude, Optional<Circuit> about, Optional<String> chosen, boolean value, Figures figures, Words words) {

    Heights heights() {
        return new Heights(figures, arrangement.water());
    }

    /** {@return whether the boat lies otherwise than level} */
    boolean inclined() {
        return attitude.heel().si() != 0 || attitude.trim().si() != 0;
    }

    /** {@return whether a part is of the circuit that the person works on, or whether there is no such circuit} */
    boolean concerns(PlacedPart part) {
        return about.map(circuit -> circuit == part.circuit()).orElse(true);
    }
}
