// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Properties;

import org.junit.jupiter.api.Test;

/** On a screen with twice the pixels everything is there, twice as large, and nothing is cut off. */
public abstract class DoubleScale extends Scenario {

    @Test
    void atTwiceTheScaleTheWalkIsTheSameAndTheLettersAreDrawnTwiceAsLarge() throws Exception {
        Properties usual = walk("1");
        Properties twice = walk("2");
        assertThat(twice.getProperty("zoom")).isEqualTo("200");
        assertThat(usual.getProperty("zoom")).isEqualTo("100");
        // In the points that a program reckons with a letter keeps its height; the screen draws each with twice the pixels.
        int points = Integer.parseInt(usual.getProperty("letters"));
        assertThat(Integer.parseInt(twice.getProperty("letters"))).isBetween(points - 1, points + 1);
        assertThat(twice.getProperty("stops")).isEqualTo(usual.getProperty("stops"));
        assertThat(twice.getProperty("cut")).as("fields whose text does not fit").isEqualTo("");
    }

    private Properties walk(String scale) throws Exception {
        try (ChildProcess other = ChildProcess.start(childApplication(), Deed.WALK_AT_SCALE, folder.resolve("person" + scale), Map.of("GDK_SCALE", scale))) {
            other.awaitMark();
            Properties told = new Properties();
            told.load(new java.io.StringReader(other.result()));
            return told;
        }
    }

    /** Goes to every stop of an example and notes what is there. */
    static final class Walk {

        private final Hand hand;
        private final WindowUnderTest window;

        Walk(Hand hand, WindowUnderTest window) {
            this.hand = hand;
            this.window = window;
        }

        String take() {
            hand.press("start.example.motor-cruiser");
            hand.await("the walk", () -> !hand.rows("walk.tree").isEmpty());
            var stops = new StringBuilder();
            var cut = new StringBuilder();
            for (String row : hand.rows("walk.tree")) {
                hand.pick("walk.tree", row);
                stops.append(row.split(" \\|")[0]).append(';');
                cut.append(window.<String>onWindow(() -> Cut.fields(window.display())));
            }
            int letters = hand.letterHeight("walk.tree");
            int zoom = window.<Integer>onWindow(() -> window.shell().getMonitor().getZoom());
            return "zoom=" + zoom + "\nletters=" + letters + "\nstops=" + stops + "\ncut=" + cut + "\n";
        }
    }
}
