// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.calculators.CalculatorsPage;
import garboard.workbench.handover.SignOffPage;
import garboard.workbench.handover.UpkeepPage;
import garboard.workbench.photo.PhotographsPage;
import garboard.workbench.trial.FirstStartPage;
import garboard.workbench.trial.LoadTrialPage;
import garboard.workbench.trial.SeaRunPage;

/** Which page stands at which stop. */
final class Pages {

    private Pages() {
    }

    static Page at(Stop stop, OpenRecord record, Desk desk, Ask ask) {
        return switch (stop) {
            case FIRST_START -> new FirstStartPage(record, desk);
            case LOAD_TRIAL -> new LoadTrialPage(record, desk);
            case SEA_RUN -> new SeaRunPage(record, desk);
            case UPKEEP -> new UpkeepPage(record, desk);
            case SIGN_OFF -> new SignOffPage(record, desk);
            case CALCULATORS -> new CalculatorsPage(record, desk);
            case PHOTOGRAPHS -> new PhotographsPage(record, desk, ask);
            case INSPECTION -> new InspectionPage(record, desk, ask);
            default -> new SystemPage(stop, record, desk);
        };
    }
}
