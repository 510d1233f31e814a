// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Practice;
import garboard.examples.Examples;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.practice.FederalGasolineCraft;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.practice.SmallPassengerVessels;
import garboard.session.Field;
import garboard.session.OpenRecord;

/** Records that are about to be handed over, held against all practices. */
final class Handed {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private Handed() {
    }

    static Catalogue catalogue() {
        return Catalogue.of(new FederalGasolineCraft(), new SmallPassengerVessels(), new SmallCraftStandards(), new HandbookPractice());
    }

    static OpenRecord example(String name) {
        return of(content(name), CLOCK);
    }

    static RecordFile content(String name) {
        try (InputStream in = Examples.find(name).orElseThrow().open()) {
            return RecordFile.read(in, name);
        } catch (IOException | RecordReadException broken) {
            throw new IllegalStateException(broken);
        }
    }

    static OpenRecord of(RecordFile content, Clock clock) {
        return OpenRecord.of(content, Optional.empty(), catalogue(), clock);
    }

    static OpenRecord empty() {
        return of(RecordFile.create(), CLOCK);
    }

    /** A record held against one check that throws. */
    static OpenRecord withBrokenCheck() {
        RecordFile file = RecordFile.create();
        file.record().setGeneratorSet(GarboardFactory.eINSTANCE.createGeneratorSet());
        file.record().getGeneratorSet().setMaker("Made-up Works");
        return OpenRecord.of(file, Optional.empty(), Catalogue.of(new Broken()), CLOCK);
    }

    static Field field(OpenRecord open, String key) {
        return open.field(key).orElseThrow();
    }

    private static final class Broken implements Practice {
        @Override
        public String id() {
            return "broken-sample";
        }

        @Override
        public String name() {
            return "Broken sample";
        }

        @Override
        public String appliesTo() {
            return "Nothing";
        }

        @Override
        public List<Check<?>> checks() {
            return List.of(Check.check("SAMPLE-BROKEN", GeneratorSet.class).title("It can be judged").why("It cannot.").basis(Basis.commonPractice())
                .gravity(Gravity.ADVICE).limit("none").needs(Literals.GENERATOR_SET__MAKER).holds(situation -> {
                    throw new IllegalStateException("broken for the test");
                }).remedy("None").build());
        }
    }
}
