// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TextMeasureTest {

    @Test
    void widthsAreThoseOfTheStandardSansSerif() {
        // Adobe Font Metrics of Helvetica: H 722, e 556, l 222, l 222, o 556; bold: H 722, e 556, l 278, l 278, o 611. 4 % are added for safety.
        assertThat(TextMeasure.width("Hello", 10, false)).isCloseTo(22.78 * 1.04, offset(1e-9));
        assertThat(TextMeasure.width("Hello", 10, true)).isCloseTo(24.45 * 1.04, offset(1e-9));
    }

    @Test
    void breaksBehindSpacesAndHyphens() {
        assertThat(TextMeasure.wrap("one two", 1000, 10, false)).containsExactly("one two");
        double width = TextMeasure.width("SIPHON-", 10, false) + 1;
        assertThat(TextMeasure.wrap("SIPHON-BREAK", width, 10, false)).containsExactly("SIPHON-", "BREAK");
        assertThat(TextMeasure.wrap("aaa bbb", TextMeasure.width("aaa b", 10, false), 10, false)).containsExactly("aaa ", "bbb");
    }

    @Test
    void breaksAgainWhereAWideLetterFollowsANarrowBreak() {
        double width = TextMeasure.width("MM", 10, false);
        assertThat(TextMeasure.wrap(" MMM", width, 10, false)).containsExactly(" ", "MM", "M");
        assertThat(TextMeasure.wrap("i-" + "\u4e00", TextMeasure.width("\u4e00", 10, false) - 1, 10, false)).hasSize(2);
    }

    @Test
    void keepsLineBreaks() {
        assertThat(TextMeasure.wrap("a\n\nb", 100, 10, false)).containsExactly("a\n", "\n", "b");
    }

    @Property
    void joinedLinesAreTheTextAgain(@ForAll String text, @ForAll @DoubleRange(min = 20, max = 300) double width, @ForAll boolean bold) {
        assertThat(String.join("", TextMeasure.wrap(text, width, 9, bold))).isEqualTo(text);
    }

    @Property
    void noLineIsWiderThanTheCell(@ForAll String text, @ForAll @DoubleRange(min = 20, max = 300) double width) {
        List<String> lines = TextMeasure.wrap(text, width, 9, false);
        for (String line : lines) {
            assertThat(TextMeasure.width(line.stripTrailing(), 9, false)).isLessThanOrEqualTo(width + 1e-6);
        }
    }
}
