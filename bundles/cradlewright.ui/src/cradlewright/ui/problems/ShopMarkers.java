package cradlewright.ui.problems;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.osgi.util.NLS;

/** Keeps the markers of the open shop as its answers and the state of its files are. */
public final class ShopMarkers implements OpenShopListener, WorkingShopListener {

    /** Type of the markers that stand for findings. */
    public static final String FINDING = "cradlewright.ui.finding";

    /** Type of the markers that stand for what is wrong with a file. */
    public static final String FILE = "cradlewright.ui.fileTrouble";

    private WorkingShop shop;
    private MarkerJob findings;
    private MarkerJob files;

    @Override
    public void opened(WorkingShop opened) {
        shop = opened;
        findings = new MarkerJob(FINDING, opened.resource());
        files = new MarkerJob(FILE, opened.resource());
        opened.addListener(this);
        files.want(troubles());
        answered();
    }

    @Override
    public void closing(WorkingShop closing) {
        closing.removeListener(this);
        findings.want(Set.of());
        files.want(Set.of());
        shop = null;
    }

    @Override
    public void changed(ShopEvent event) {
        if (event.kind().changesObjects()) {
            files.want(troubles());
        }
    }

    @Override
    public void answered() {
        switch (shop.state()) {
            case CURRENT -> findings.want(answers());
            case HELD_BACK -> findings.want(Set.of(remark(IMarker.SEVERITY_ERROR, shop.heldBack())));
            case STOPPED -> {
                Set<Wanted> all = answers();
                all.add(remark(IMarker.SEVERITY_WARNING, Messages.Checking_stopped));
                findings.want(all);
            }
            case WORKING_OUT -> { }
        }
    }

    private Wanted remark(int severity, String words) {
        return new Wanted(shop.resource(), severity, words, shop.snapshot().name(), 0, "", "");
    }

    private Set<Wanted> answers() {
        Set<Wanted> wanted = new LinkedHashSet<>();
        shop.answers().ifPresent(answers -> answers.findings().stream().filter(finding -> finding.verdict() != Verdict.HOLDS)
                .map(this::marker).forEach(wanted::add));
        return wanted;
    }

    private Wanted marker(Finding finding) {
        Optional<ShopFile> file = shop.fileOf(finding.objectId()).or(() -> shop.fileOf(finding.subject().ownerId()));
        String message = NLS.bind(Messages.Problem_finding, finding.verdict().word(), finding.words());
        String location = finding.objectName().equals(finding.subject().label()) ? finding.objectName()
                : NLS.bind(Messages.Problem_location, finding.subject().label(), finding.objectName());
        return new Wanted(file.<IResource>map(shop::resource).filter(IResource::exists).orElse(shop.resource()),
                severity(finding.verdict()),
                message, location, 0, finding.objectId(), finding.check());
    }

    private static int severity(Verdict verdict) {
        return switch (verdict) {
            case STOP -> IMarker.SEVERITY_ERROR;
            case CANT_SAY -> IMarker.SEVERITY_WARNING;
            default -> IMarker.SEVERITY_INFO;
        };
    }

    private Set<Wanted> troubles() {
        Set<Wanted> wanted = new LinkedHashSet<>();
        shop.problems().forEach(problem -> wanted.add(marker(problem)));
        return wanted;
    }

    private Wanted marker(ReadProblem problem) {
        IResource resource = shop.resource().getFile(problem.file());
        String who = problem.objectName().isEmpty() ? "" : problem.objectName() + ": ";
        int severity = switch (problem.severity()) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            case NOTE -> IMarker.SEVERITY_INFO;
        };
        boolean serious = severity == IMarker.SEVERITY_ERROR || !problem.unknownId().isEmpty();
        String location = problem.line() > 0 ? NLS.bind(Messages.Problem_line, problem.file(), problem.line()) : problem.file();
        return new Wanted(resource.exists() ? resource : shop.resource(), serious ? IMarker.SEVERITY_ERROR : severity,
                NLS.bind(Messages.Problem_file, who + problem.what(), problem.mend()), location, problem.line(), problem.objectId(), "");
    }
}
