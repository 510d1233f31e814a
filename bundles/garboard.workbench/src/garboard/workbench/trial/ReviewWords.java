// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;
import java.util.Locale;

import garboard.session.trial.Settling;
import garboard.session.trial.StepReview;
import garboard.session.trial.StepReview.Lack;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** What a load step lacks, in words. */
final class ReviewWords {

    private final Desk desk;
    private final Texts.Of texts;

    ReviewWords(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(ReviewWords.class);
    }

    /** {@return the step in a few words, for the right of its heading} */
    String note(StepReview review) {
        String readings = texts.get("review.readings", review.readings());
        return review.complete() ? texts.get("review.complete", readings) : texts.get("review.lacking", readings,
            String.join(", ", review.lacks().stream().map(lack -> texts.get("lack.short." + lack.name())).distinct().toList()));
    }

    /** {@return what is missing, a sentence each} */
    String lacks(StepReview review) {
        List<Settling> moving = review.unsettled().stream().filter(one -> one.change().isPresent()).toList();
        String nothing = moving.isEmpty() ? texts.get("review.nothing") : texts.get("review.moving", settling(moving));
        return review.complete() ? nothing : String.join("\n", review.lacks().stream().map(lack -> sentence(lack, review)).toList());
    }

    private String sentence(Lack lack, StepReview review) {
        return switch (lack) {
            case FEW_READINGS -> texts.get("lack.FEW_READINGS", review.readings(), review.usual().orElseThrow().readings());
            case SHORT_DWELL -> texts.get("lack.SHORT_DWELL", review.usual().orElseThrow().dwell());
            case TIMES -> texts.get("lack.TIMES", review.untimed());
            case INSTRUMENTS -> texts.get("lack.INSTRUMENTS", review.withoutInstrument());
            case NOT_SETTLED -> texts.get("lack.NOT_SETTLED", settling(review.unsettled().stream().filter(one -> one.change().isPresent()).toList()));
            case SETTLING_UNKNOWN -> texts.get("lack.SETTLING_UNKNOWN", settling(review.unsettled().stream().filter(one -> one.change().isEmpty()).toList()));
            default -> texts.get("lack." + lack.name());
        };
    }

    private String settling(List<Settling> ones) {
        return String.join("; ", ones.stream().map(one -> one.change().map(change -> texts.get("lack.change", desk.labels().label(one.field()),
            String.format(Locale.ROOT, "%+.1f", change.in("K")), one.permitted())).orElseGet(() -> desk.labels().label(one.field()))).toList());
    }
}
