// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import garboard.trial.log.AcLine;
import garboard.trial.log.LogOptions;
import garboard.trial.log.Measurand;
import garboard.trial.testing.Collected;

/** Expected values: {@code messages.txt} beside this class, which says where they come from. */
class OwnMessagesTest {

    @TestFactory
    List<DynamicTest> readsEachMessage() {
        List<DynamicTest> tests = new ArrayList<>();
        for (String one : text().split("(?m)^= ")) {
            if (!one.startsWith("#")) {
                List<String> lines = one.lines().toList();
                tests.add(DynamicTest.dynamicTest(lines.get(0), () -> assertRead(lines.subList(1, lines.size()))));
            }
        }
        assertThat(tests).hasSize(14);
        return tests;
    }

    private static void assertRead(List<String> lines) {
        Collected log = Collected.from(FrameLogReader.candump(LogOptions.NONE), lines.stream().filter(line -> line.startsWith("("))
            .toArray(String[]::new));
        List<String> expected = lines.stream().filter(line -> line.startsWith(">")).map(line -> line.substring(2)).toList();
        assertThat(log.readings()).extracting(reading -> what(reading.channel().measurand(), reading.channel().line()))
            .containsExactlyElementsOf(expected.stream().map(OwnMessagesTest::what).toList());
        for (int i = 0; i < expected.size(); i++) {
            double si = si(expected.get(i));
            assertThat(log.readings().get(i).si()).as(expected.get(i)).isCloseTo(si, within(1e-9 * Math.abs(si)));
        }
    }

    private static String what(Measurand measurand, AcLine line) {
        return line == AcLine.NONE ? measurand.name() : measurand.name() + " " + line;
    }

    private static String what(String expected) {
        String[] words = expected.split(" ");
        return Stream.of(AcLine.values()).anyMatch(line -> line.name().equals(words[1])) ? words[0] + " " + words[1] : words[0];
    }

    /** The quantity that is expected, by way of its kind; a code has no unit. */
    private static double si(String expected) {
        String[] words = expected.substring(what(expected).length() + 1).split(" ");
        double number = Double.parseDouble(words[0]);
        return words.length == 1 ? number : Measurand.valueOf(expected.split(" ")[0]).kind().orElseThrow().of(number, words[1]).si();
    }

    private static String text() {
        try (InputStream in = OwnMessagesTest.class.getResourceAsStream("messages.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
