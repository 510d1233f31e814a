// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__RISE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SAG_FREE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.Answer;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** A run that has to fall has neither a sag nor a climb in it: the mean fall says nothing of a pocket. */
final class ExhaustSagFree {

    private ExhaustSagFree() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-SAG-FREE", ExhaustSectionRun.class)
            .among(Sections.among(Sections.FALLING), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust has no sag")
            .why("Water collects in a sag, chokes the gas, and is thrown both ways when the boat moves.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("falling all the way from injection to muffler and from crest to outlet, no sag and no climb")
            .applies(Conditions.asked(EXHAUST_SECTION_RUN__SAG_FREE))
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__SAG_FREE)
            .uses(EXHAUST_SECTION_RUN__RISE)
            .holds(s -> compare(s.subject()))
            .remedy("Re-hang the run on more supports so that it falls all the way")
            .build();
    }

    private static Comparison compare(ExhaustSectionRun run) {
        if (run.getRise() != null && run.getRise().si() > 0) {
            return Comparison.holds(Sections.inWords(run) + " climbs by " + Figures.both(run.getRise()) + " where it has to fall", false);
        }
        boolean free = run.getSagFree() == Answer.YES;
        return Comparison.holds(Sections.inWords(run) + (free ? " has no sag" : " has a sag"), free);
    }
}
