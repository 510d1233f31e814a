// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import garboard.checks.Basis;
import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Practice;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.Records;
import garboard.model.UnreadEntry;
import garboard.model.io.RecordFile;

class ConsoleTest {

    @TempDir
    Path folder;

    private void example(String name) {
        assertThat(ConsoleRun.in(folder, "new", "--example", name, "--output", name + ".garboard").exit()).isZero();
    }

    private static CommissioningRecord open(Path file) throws Exception {
        return RecordFile.open(file).record();
    }

    @ParameterizedTest
    @ValueSource(strings = { "motor-cruiser", "sailing-yacht", "passenger-boat" })
    void aReportCarriesTheRecordBackEqual(String name) throws Exception {
        example(name);
        ConsoleRun report = ConsoleRun.in(folder, "report", name + ".garboard");
        assertThat(report.exit()).as(report.err()).isLessThan(2);
        assertThat(report.out()).contains("Wrote " + name + ".xlsx").contains("certifies nothing");
        assertThat(ConsoleRun.in(folder, "read", name + ".xlsx", "--output", "back.garboard").exit()).isZero();
        assertThat(Records.firstDifference(open(folder.resolve(name + ".garboard")), open(folder.resolve("back.garboard")))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = { "motor-cruiser", "sailing-yacht", "passenger-boat" })
    void aFormThatNobodyTouchedGivesTheRecordBackEqual(String name) throws Exception {
        example(name);
        assertThat(ConsoleRun.in(folder, "form", "--from", name + ".garboard", "--output", "form.xlsx").exit()).isZero();
        ConsoleRun read = ConsoleRun.in(folder, "read", "form.xlsx", "--output", "back.garboard");
        assertThat(read.exit()).as(read.err()).isZero();
        assertThat(Records.firstDifference(open(folder.resolve(name + ".garboard")), open(folder.resolve("back.garboard")))).isEmpty();
    }

    @Test
    void exitsWithOneWhenSomethingFallsShortAndSaysTheWayOut() {
        example("motor-cruiser");
        ConsoleRun check = ConsoleRun.in(folder, "check", "motor-cruiser.garboard");
        assertThat(check.exit()).isEqualTo(1);
        assertThat(check.out()).contains("FALLS SHORT").contains("limit").contains("remedy").contains("basis");
        assertThat(check.err()).isEmpty();
    }

    @Test
    void exitsWithZeroWhenNothingFallsShortAndNeverCallsTheUnknownAPass() {
        ConsoleRun.in(folder, "new", "--output", "empty.garboard");
        ConsoleRun check = ConsoleRun.in(folder, "check", "empty.garboard", "--format", "json");
        assertThat(check.exit()).isZero();
        JsonObject counts = JsonParser.parseString(check.out()).getAsJsonObject().getAsJsonObject("counts");
        assertThat(counts.get("meets").getAsInt()).isZero();
        assertThat(counts.get("cannot-tell").getAsInt()).isGreaterThan(60);
    }

    @Test
    void saysWhatWasTypedAndCouldNotBeRead() throws Exception {
        RecordFile file = RecordFile.create();
        file.record().setVessel(GarboardFactory.eINSTANCE.createVessel());
        UnreadEntry entry = GarboardFactory.eINSTANCE.createUnreadEntry();
        entry.setPlace("vessel.beam");
        entry.setText("3.2 parsecs");
        file.record().getUnreadEntries().add(entry);
        file.save(folder.resolve("typed.garboard"));
        assertThat(ConsoleRun.in(folder, "check", "typed.garboard").err()).contains("Beam: \"3.2 parsecs\"").contains("counts as not entered");
    }

    @Test
    void exitsWithThreeWhenACheckBrokeAndShowsTheOthers() {
        ConsoleRun.in(folder, "new", "--output", "any.garboard");
        Check<?> broken = Check.check("SAMPLE-BROKEN", CommissioningRecord.class).title("t").why("w").basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE).limit("l").needs(GarboardPackage.Literals.COMMISSIONING_RECORD__FORMAT_VERSION).holds(s -> {
                throw new IllegalStateException("a fault of ours");
            }).remedy("r").build();
        ConsoleRun check = ConsoleRun.in(folder, Catalogue.of(practice(broken)), "check", "any.garboard");
        assertThat(check.exit()).isEqualTo(3);
        assertThat(check.out()).contains("CHECK BROKE").contains("a fault of ours");
    }

    private static Practice practice(Check<?> check) {
        return new Practice() {
            @Override
            public String id() {
                return "sample";
            }

            @Override
            public String name() {
                return "Sample";
            }

            @Override
            public String appliesTo() {
                return "tests";
            }

            @Override
            public List<Check<?>> checks() {
                return List.of(check);
            }
        };
    }

    @Test
    void theJsonOfAVerdictHasTheDocumentedFields() {
        example("motor-cruiser");
        JsonObject json = JsonParser.parseString(ConsoleRun.in(folder, "check", "motor-cruiser.garboard", "--format", "json").out()).getAsJsonObject();
        assertThat(json.keySet()).containsExactly("format", "record", "day", "outcome", "counts", "practicesNotAtHand", "verdicts");
        assertThat(json.get("day").getAsString()).isEqualTo("2026-06-01");
        JsonObject verdict = json.getAsJsonArray("verdicts").asList().stream().map(element -> element.getAsJsonObject())
            .filter(candidate -> candidate.get("verdict").getAsString().equals("falls-short") && candidate.has("margin")).findFirst().orElseThrow();
        assertThat(verdict.keySet()).contains("check", "title", "practice", "subject", "verdict", "sentence", "gravity", "measured", "limit", "margin",
            "basis", "remedy", "missing");
        assertThat(verdict.getAsJsonObject("margin").keySet()).contains("value", "unit");
        assertThat(verdict.getAsJsonObject("limit").keySet()).contains("value", "unit", "origin", "fromMaker");
        assertThat(verdict.getAsJsonObject("basis").keySet()).contains("kind", "citation", "status");
    }

    @Test
    void theCatalogueIsTheSameInEveryFormat() {
        String csv = ConsoleRun.in(folder, "catalogue", "--format", "csv").out();
        JsonObject json = JsonParser.parseString(ConsoleRun.in(folder, "catalogue", "--format", "json").out()).getAsJsonObject();
        long checks = json.getAsJsonArray("practices").asList().stream()
            .mapToLong(practice -> practice.getAsJsonObject().getAsJsonArray("checks").size()).sum();
        assertThat(checks).isGreaterThanOrEqualTo(60);
        assertThat(csv.split("\r\n")).hasSize((int) checks + 1);
        String text = ConsoleRun.in(folder, "catalogue").out();
        json.getAsJsonArray("practices").forEach(practice -> practice.getAsJsonObject().getAsJsonArray("checks")
            .forEach(check -> assertThat(text).contains(check.getAsJsonObject().get("check").getAsString())));
    }

    @Test
    void calculatesWithUnitsAndNamesFormulaAndSource() {
        // Height of a point 1 m off the centreline and 0.45 m up at 30 degrees of heel: rotation by hand, 0.45 cos 30 - 1 sin 30 = -0.1103 m
        ConsoleRun run = ConsoleRun.in(folder, "calculate", "heeled-height", "height=0.45 m", "starboard=1 m", "heel=30 deg");
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("-110").contains("formula").contains("source");
        assertThat(ConsoleRun.in(folder, "calculate").out()).contains("heeled-height");
    }

    @Test
    void wrongArgumentsOfACalculationAreNamed() {
        ConsoleRun run = ConsoleRun.in(folder, "calculate", "heeled-height", "height=0.45 kg", "starboard=1 m", "heel=30 deg");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("height").contains("kg").hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "bogus", "check", "check|none.garboard", "check|.", "check|a.garboard|--format|xml", "check|a.garboard|--format|csv",
        "report|none.garboard", "new", "form", "read|none.xlsx|--output|x.garboard", "calculate|no-such-thing", "check|text.garboard", "check|a.garboard|--day|2026-13-01", "read|a.garboard|--output|x.garboard",
        "check|foreign.garboard", "check|cut.garboard", "check|unit.garboard", "read|text.garboard|--output|x.garboard", "check|entity.garboard",
        "report|a.garboard|--output|.", "report|a.garboard|--output|no-folder/r.xlsx", "form|--output|no-folder/f.xlsx", "report|a.garboard|--paper|a3",
        "new|--output|a.garboard", "new|--example|none|--output|b.garboard" })
    void whatCannotBeDoneIsSaidInOneSentenceWithExitTwo(String line) throws IOException {
        ConsoleRun.in(folder, "new", "--output", "a.garboard");
        byte[] before = Files.readAllBytes(folder.resolve("a.garboard"));
        Files.writeString(folder.resolve("text.garboard"), "just some words");
        Files.writeString(folder.resolve("foreign.garboard"), "<?xml version=\"1.0\"?><html><body/></html>");
        Files.writeString(folder.resolve("entity.garboard"),
            "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><x>&e;</x>");
        Files.write(folder.resolve("cut.garboard"), java.util.Arrays.copyOf(before, before.length / 2));
        Files.writeString(folder.resolve("unit.garboard"), new String(before, java.nio.charset.StandardCharsets.UTF_8).replaceFirst("/>\\s*$",
            "><vessel beam=\"4 kg\"/></garboard:CommissioningRecord>"));
        ConsoleRun run = ConsoleRun.in(folder, line.isEmpty() ? new String[0] : line.split("\\|"));
        assertThat(run.exit()).as(run.out() + run.err()).isEqualTo(2);
        assertThat(run.err().strip()).startsWith("garboard: ").doesNotContain("\n").doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(Files.readAllBytes(folder.resolve("a.garboard"))).isEqualTo(before);
        assertThat(folder.resolve("x.garboard")).doesNotExist();
    }

    @Test
    void readingAFormOverARecordKeepsTheOlderOne() throws Exception {
        ConsoleRun.in(folder, "new", "--title", "First", "--output", "a.garboard");
        ConsoleRun.in(folder, "form", "--output", "form.xlsx");
        assertThat(ConsoleRun.in(folder, "read", "form.xlsx", "--output", "a.garboard").exit()).isZero();
        assertThat(open(folder.resolve("a.garboard.bak")).getTitle()).isEqualTo("First");
    }

    @ParameterizedTest
    @ValueSource(strings = { "--help", "new --help", "form --help", "read --help", "check --help", "report --help", "catalogue --help",
        "calculate --help" })
    void everyCommandExplainsItself(String line) {
        ConsoleRun run = ConsoleRun.in(folder, line.split(" "));
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Usage:").contains("garboard");
    }
}
