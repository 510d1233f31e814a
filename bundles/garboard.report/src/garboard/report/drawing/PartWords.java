// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.HeeledHeight.HeightAt;
import garboard.quantity.Angle;

/** What a window says of parts and attitudes, in the language of who looks at it. */
public final class PartWords {

    private final Showing showing;
    private final Words words;
    private final Heights heights;

    public PartWords(Showing showing) {
        this.showing = showing;
        this.words = showing.words();
        this.heights = showing.heights();
    }

    /** {@return height above the loaded waterline, in few words} */
    Optional<String> height(PlacedPart part) {
        return part.z().isPresent() ? Optional.of(signed("label.aboveLine", "label.belowLine", part.z().getAsDouble())) : Optional.empty();
    }

    /** {@return height above the water as it is shown, in few words} */
    String clearance(double metres) {
        return signed("label.aboveWater", "label.underWater", metres);
    }

    /** {@return height above the water as it is shown, of a part whose three coordinates are entered} */
    Optional<Double> above(PlacedPart part) {
        return part.place().map(place -> HeeledHeight.of(place, showing.attitude()).si());
    }

    private String signed(String above, String below, double metres) {
        return words.get(metres < 0 ? below : above, heights.length(metres));
    }

    /** {@return all there is to say of a part, its name first} */
    public List<String> details(PlacedPart part) {
        var lines = new ArrayList<String>();
        lines.add(part.name());
        part.z().ifPresent(z -> lines.add(signed("detail.above", "detail.below", z)));
        above(part).ifPresent(metres -> lines.add(signed("detail.aboveWater", "detail.underWater", metres)));
        if (showing.arrangement().water().inclines()) {
            part.place().ifPresent(place -> {
                HeightAt worst = showing.arrangement().water().worst(place);
                lines.add(words.get(worst.height().si() < 0 ? "detail.lowestUnder" : "detail.lowest", heights.length(worst.height().si()),
                    attitude(worst.attitude())));
            });
        }
        part.worst().ifPresent(verdict -> lines.add(words.get("detail.verdict", words.get(verdict.standing()), verdict.sentence())));
        return lines;
    }

    /** {@return the same as one sentence, for people who cannot see the drawing} */
    public String sentence(PlacedPart part) {
        String said = String.join(", ", details(part));
        return said.endsWith(".") ? said : said + ".";
    }

    /** {@return an attitude in words: "20° heel to starboard, 2° bow up"} */
    public String attitude(Attitude attitude) {
        var said = new ArrayList<String>();
        double heel = attitude.heel().si();
        double trim = attitude.trim().si();
        if (heel != 0) {
            String which = showing.arrangement().water().rolls() ? "roll" : "heel";
            said.add(words.get("attitude." + which + (heel > 0 ? ".starboard" : ".port"), angle(heel)));
        }
        if (trim != 0) {
            said.add(words.get(trim > 0 ? "attitude.bowUp" : "attitude.bowDown", angle(trim)));
        }
        if (said.isEmpty()) {
            said.add(words.get("attitude.upright"));
        }
        return String.join(", ", said);
    }

    private String angle(double radians) {
        return heights.angle(Angle.of(Math.abs(radians)));
    }
}
