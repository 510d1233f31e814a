// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Collectors;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.checks.Catalogue;
import garboard.checks.Evaluator;
import garboard.checks.Verdict;
import garboard.examples.Examples;
import garboard.model.io.RecordFile;
import garboard.practice.FederalGasolineCraft;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.practice.SmallPassengerVessels;

/**
 * Every verdict on every example, as somebody read it and would sign it. A frozen answer, not a proof: when a check changes, the
 * difference is read line by line before the new answer is accepted.
 */
class ExampleVerdictsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);

    @ParameterizedTest
    @ValueSource(strings = { "motor-cruiser", "sailing-yacht", "passenger-boat" })
    void theVerdictsAreThoseThatWereAccepted(String name) throws Exception {
        String now = verdicts(name);
        if (!now.equals(accepted(name))) {
            Path beside = Path.of("target", "verdicts-" + name + ".txt").toAbsolutePath();
            Files.createDirectories(beside.getParent());
            Files.writeString(beside, now);
            assertThat(now).as("read the difference; to accept it, copy " + beside + " over the file of that name beside this test")
                .isEqualTo(accepted(name));
        }
    }

    private static String accepted(String name) throws IOException {
        try (var in = ExampleVerdictsTest.class.getResourceAsStream("verdicts-" + name + ".txt")) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String verdicts(String name) throws Exception {
        var catalogue = Catalogue.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(), new SmallPassengerVessels());
        try (var in = Examples.find(name).orElseThrow().open()) {
            RecordFile record = RecordFile.read(in, name);
            return new Evaluator(catalogue).evaluate(record.record(), DAY).verdicts().stream().map(ExampleVerdictsTest::line)
                .collect(Collectors.joining("\n", "", "\n"));
        }
    }

    private static String line(Verdict verdict) {
        return verdict.standing().label() + " | " + verdict.check().id() + " | " + verdict.subjectKey() + " | " + verdict.sentence();
    }
}
