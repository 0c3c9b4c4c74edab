package cradlewright.diagrams.shared;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.TreeSearch;

/** The sheet of a scene. Where the text of one item lies over the drawn thing of another, the thing is what the mouse meets. */
public final class SceneLayer extends FreeformLayer {

    @Override
    public IFigure findFigureAt(int x, int y, TreeSearch search) {
        if (!search.prune(this)) {
            List<SceneFigure> figures = figures();
            for (int i = figures.size() - 1; i >= 0; i--) {
                SceneFigure figure = figures.get(i);
                if (figure.meets(x, y) && !search.prune(figure) && search.accept(figure)) {
                    return figure;
                }
            }
        }
        return super.findFigureAt(x, y, search);
    }

    private List<SceneFigure> figures() {
        List<SceneFigure> figures = new ArrayList<>();
        for (Object child : getChildren()) {
            if (child instanceof SceneFigure figure) {
                figures.add(figure);
            }
        }
        return figures;
    }
}
