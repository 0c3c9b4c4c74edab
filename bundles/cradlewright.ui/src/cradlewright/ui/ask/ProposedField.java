package cradlewright.ui.ask;

import cradlewright.ui.look.Spoken;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** A field that offers what has the typed words in it; Enter or a choice asks. */
final class ProposedField {

    private static final int SHOWN = 40;

    private final Text field;

    /**
     * Makes the field.
     *
     * @param hint what stands in the empty field; also its name for those who hear the window
     * @param names what can be asked for, looked up at each key
     * @param asked called with the text
     */
    ProposedField(Composite parent, String hint, Supplier<List<String>> names, Consumer<String> asked) {
        field = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        field.setMessage(hint);
        field.setToolTipText(hint);
        Spoken.name(field, hint);
        ContentProposalAdapter adapter = new ContentProposalAdapter(field, new TextContentAdapter(),
                (contents, position) -> names.get().stream().filter(name -> Words.in(name, contents)).limit(SHOWN)
                        .map(ContentProposal::new).toArray(IContentProposal[]::new),
                null, null);
        adapter.setAutoActivationDelay(0);
        adapter.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
        adapter.addContentProposalListener(proposal -> asked.accept(proposal.getContent()));
        field.addListener(SWT.DefaultSelection, event -> {
            if (event.detail != SWT.CANCEL && !adapter.isProposalPopupOpen() && !field.getText().isBlank()) {
                asked.accept(field.getText());
            }
        });
    }

    Text control() {
        return field;
    }
}
