package cradlewright.ui.help;

import cradlewright.ui.look.Spoken;
import java.util.List;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IPartListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormText;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.TableWrapData;
import org.eclipse.ui.forms.widgets.TableWrapLayout;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** Shows the page of the view or editor in which somebody works, or one that is chosen; its links run commands and show views. */
public final class HelpView extends ViewPart {

    /** Its id. */
    public static final String ID = "cradlewright.ui.helpView";

    private static final String COMMAND = "command:";
    private static final String VIEW = "view:";
    private static final String PAGE = "page:";

    private static final List<String> PAGES = List.of("", "first-car", "first-dolly", "keys", "libraries");

    private final IPartListener follower = new IPartListener() {
        @Override
        public void partActivated(IWorkbenchPart part) {
            if (part != HelpView.this && choice.getSelectionIndex() == 0) {
                showPageOf(part);
            }
        }

        @Override
        public void partBroughtToTop(IWorkbenchPart part) {
            // Being activated is what counts.
        }

        @Override
        public void partClosed(IWorkbenchPart part) {
            // The next part is activated.
        }

        @Override
        public void partDeactivated(IWorkbenchPart part) {
            // The next part is activated.
        }

        @Override
        public void partOpened(IWorkbenchPart part) {
            // Being activated is what counts.
        }
    };

    private FormToolkit forms;
    private Combo choice;
    private ScrolledForm scrolled;
    private FormText text;

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        choice = new Combo(parent, SWT.READ_ONLY);
        choice.setItems(Messages.Page_here, Messages.Page_firstCar, Messages.Page_firstDolly, Messages.Page_keys, Messages.Page_libraries);
        choice.select(0);
        Spoken.name(choice, Messages.Page_which);
        choice.addListener(SWT.Selection, event -> choose(PAGES.get(choice.getSelectionIndex())));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(choice);
        forms = new FormToolkit(parent.getDisplay());
        scrolled = forms.createScrolledForm(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(scrolled);
        TableWrapLayout layout = new TableWrapLayout();
        scrolled.getBody().setLayout(layout);
        text = forms.createFormText(scrolled.getBody(), true);
        text.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        text.setFont("title", JFaceResources.getHeaderFont());
        text.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent event) {
                follow(String.valueOf(event.getHref()));
            }
        });
        getSite().getPage().addPartListener(follower);
        showPageOf(getSite().getPage().getActivePart());
    }

    /** Shows the page of a part; the general one when it has none. */
    void showPageOf(IWorkbenchPart part) {
        choice.select(0);
        String id = part == null || part == this ? HelpPages.GENERAL : part.getSite().getId();
        show(HelpPages.find(id).orElseGet(() -> HelpPages.find(HelpPages.GENERAL).orElseThrow()));
    }

    /** Shows one of the pages that can be chosen. */
    void choose(String page) {
        choice.select(PAGES.indexOf(page));
        if (page.isEmpty()) {
            showPageOf(getSite().getPage().getActiveEditor());
        } else {
            show(HelpPages.find(page).orElseThrow());
        }
    }

    private void show(String page) {
        text.setText(page, true, false);
        scrolled.reflow(true);
        scrolled.setOrigin(0, 0);
    }

    private void follow(String link) {
        try {
            if (link.startsWith(COMMAND)) {
                getSite().getService(IHandlerService.class).executeCommand(link.substring(COMMAND.length()), null);
            } else if (link.startsWith(VIEW)) {
                getSite().getPage().showView(link.substring(VIEW.length()));
            } else if (link.startsWith(PAGE)) {
                choose(link.substring(PAGE.length()));
            }
        } catch (CommandException | PartInitException e) {
            getViewSite().getActionBars().getStatusLineManager().setErrorMessage(Messages.Link_notNow);
        }
    }

    @Override
    public void setFocus() {
        text.setFocus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(follower);
        if (forms != null) {
            forms.dispose();
        }
        super.dispose();
    }
}
