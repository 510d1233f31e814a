// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SECTIONS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

import garboard.checks.FeaturePath;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;

/** The parts of an exhaust run, chosen by what they lie between. */
final class Sections {

    /** Everything that carries water and gas together, from the injection to the outlet. */
    static final Set<ExhaustSection> WET = Set.of(ExhaustSection.INJECTION_TO_MUFFLER, ExhaustSection.MUFFLER_TO_CREST,
        ExhaustSection.CREST_TO_OUTLET);

    /** The parts that have to fall all the way. */
    static final Set<ExhaustSection> FALLING = Set.of(ExhaustSection.INJECTION_TO_MUFFLER, ExhaustSection.CREST_TO_OUTLET);

    /** From the lift to the outlet. */
    static final Set<ExhaustSection> BEHIND_MUFFLER = Set.of(ExhaustSection.MUFFLER_TO_CREST, ExhaustSection.CREST_TO_OUTLET);

    static final Set<ExhaustSection> DRY = Set.of(ExhaustSection.DRY);

    private Sections() {
    }

    /**
     * Chooses subjects for a check. A part of which nobody has said what it lies between is chosen too: it is judged as cannot tell, not passed
     * over.
     */
    static Predicate<ExhaustSectionRun> among(Set<ExhaustSection> wanted) {
        return run -> wanted.contains(run.getSection()) || run.getSection() == ExhaustSection.NOT_ENTERED;
    }

    /** What each part lies between. */
    static FeaturePath between() {
        return path(EXHAUST_RUN__SECTIONS, EXHAUST_SECTION_RUN__SECTION);
    }

    /** The parts of an exhaust that lie there, as the start of a path. */
    static FeaturePath in(Set<ExhaustSection> wanted) {
        return path(EXHAUST_RUN__SECTIONS).where(ExhaustSectionRun.class, run -> wanted.contains(run.getSection()));
    }

    /** The parts of an exhaust that lie there. */
    static List<ExhaustSectionRun> of(ExhaustRun exhaust, Set<ExhaustSection> wanted) {
        return exhaust.getSections().stream().filter(run -> wanted.contains(run.getSection())).toList();
    }

    /** For sentences. */
    static String inWords(ExhaustSectionRun run) {
        return switch (run.getSection()) {
            case DRY -> "the dry part";
            case INJECTION_TO_MUFFLER -> "the run from injection to muffler";
            case MUFFLER_TO_CREST -> "the run from muffler to crest";
            case CREST_TO_OUTLET -> "the run from crest to outlet";
            case SEPARATOR_DRAIN -> "the drain of the separator";
            case NOT_ENTERED -> "this part";
        };
    }
}
