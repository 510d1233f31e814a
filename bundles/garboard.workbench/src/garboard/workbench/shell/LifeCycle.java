// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.time.Clock;
import java.util.concurrent.CompletableFuture;

import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.core.services.translation.TranslationService;
import org.eclipse.e4.ui.workbench.lifecycle.PostContextCreate;

import garboard.checks.Catalogue;
import garboard.checks.PracticeExtensions;
import garboard.workbench.Desk;
import garboard.workbench.look.Settings;
import garboard.workbench.text.Texts;

/** Sets the table before the window comes up. */
public final class LifeCycle {

    @PostContextCreate
    void prepare(IEclipseContext context) {
        // POI would look for a logging library and complain on the console; the log of the platform is ours.
        System.setProperty("log4j2.loggerContextFactory", "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
        var settings = new Settings(InstanceScope.INSTANCE.getNode("garboard.workbench"));
        context.set(TranslationService.LOCALE, settings.language());
        context.set(Settings.class, settings);
        context.set(Desk.class, new Desk(settings, Texts.in(settings.language()), catalogue(), Clock.systemDefaultZone()));
    }

    private static CompletableFuture<Catalogue> catalogue() {
        return CompletableFuture.supplyAsync(() -> Catalogue.of(PracticeExtensions.practices(RegistryFactory.getRegistry())));
    }
}
