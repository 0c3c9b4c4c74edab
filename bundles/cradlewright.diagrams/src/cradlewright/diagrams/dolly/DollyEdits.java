package cradlewright.diagrams.dolly;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.dolly.DollyAdditions.Sort;
import cradlewright.diagrams.shared.Moved;
import cradlewright.diagrams.shared.SceneEdits;
import cradlewright.diagrams.shared.TypedPlace;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.Member;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.stock.Section;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import cradlewright.ui.words.Nouns;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** What may be done in the diagram of a dolly. */
record DollyEdits(ShopFolder folder, Dolly dolly, IdSource ids) implements SceneEdits {

    /** Sheet or a wall thicker than this is a slip of the hand, mm. */
    private static final double THICKEST = 50;
    private static final String THICKNESS = "thickness";

    @Override
    public boolean movable(EObject thing) {
        return removable(thing) && DollyPlace.of(thing).isPresent();
    }

    @Override
    public boolean removable(EObject thing) {
        return thing.eContainer() == dolly;
    }

    @Override
    public Optional<Position> moved(EObject thing, Vec3 way, double grid) {
        return DollyPlace.of(thing).map(from -> Moved.by(from, way, grid));
    }

    @Override
    public Optional<ShopChange> move(EObject thing, Vec3 way, double grid) {
        return moved(thing, way, grid).map(to -> change(Messages.Edit_move, thing, () -> DollyPlace.set(thing, to)));
    }

    private ShopChange change(String label, EObject thing, Runnable body) {
        return new ShopChange(NLS.bind(label, Nouns.kindAndName(thing)), file(), body);
    }

    private ShopFile file() {
        return folder.fileOf(dolly).orElseThrow();
    }

    @Override
    public Optional<ShopChange> mirror(List<EObject> things) {
        return new DollyTwins(dolly, ids).mirror(things, file());
    }

    @Override
    public Optional<ShopChange> align(List<EObject> things) {
        List<EObject> all = things.stream().filter(this::movable).distinct().toList();
        if (all.size() < 2) {
            return Optional.empty();
        }
        double x = DollyPlace.of(all.get(0)).orElseThrow().x();
        return Optional.of(change(Messages.Edit_align, all.get(0), () -> all.stream().skip(1).forEach(thing -> {
            Position from = DollyPlace.of(thing).orElseThrow();
            DollyPlace.set(thing, Moved.by(from, x - from.x(), 0, 0));
        })));
    }

    /** The thickness of what a member is made of, the place of anything else. */
    @Override
    public Optional<String> shown(EObject thing, UnitSystem units) {
        return section(thing).flatMap(DollyEdits::thickness).map(thick -> TypedPlace.length(thick.in(Unit.MILLIMETRE), units))
                .or(() -> DollyPlace.of(thing).map(at -> TypedPlace.text(at, units)));
    }

    /** A section in stock is the same for all members that are made of it, on this dolly and on others. */
    private static Optional<Section> section(EObject thing) {
        return thing instanceof Member member ? Optional.ofNullable(member.getSection())
                : thing instanceof Section section ? Optional.of(section) : Optional.empty();
    }

    private static Optional<Measured> thickness(Section section) {
        EStructuralFeature feature = section.eClass().getEStructuralFeature(THICKNESS);
        return Optional.ofNullable(feature).map(section::eGet).map(Measured.class::cast);
    }

    @Override
    public Optional<ShopChange> typed(EObject thing, String text, UnitSystem units) {
        Optional<Section> section = section(thing);
        if (section.isPresent()) {
            return section.filter(of -> thickness(of).isPresent()).map(of -> thick(of, text, units));
        }
        return DollyPlace.of(thing).map(before -> {
            Position to = TypedPlace.place(text, before, units, Locale.getDefault());
            return change(Messages.Edit_place, thing, () -> DollyPlace.set(thing, to));
        });
    }

    private ShopChange thick(Section section, String text, UnitSystem units) {
        double mm = TypedPlace.length(text, THICKEST, Messages.Sheet_found, Messages.Sheet_mend, units, Locale.getDefault());
        return new ShopChange(NLS.bind(Messages.Edit_thickness, Nouns.kindAndName(section)), folder.fileOf(section).orElseThrow(),
                () -> section.eSet(section.eClass().getEStructuralFeature(THICKNESS), Measured.of(mm, Unit.MILLIMETRE, Source.DRAWING)));
    }

    @Override
    public Optional<ShopChange> add(Object sort, Vec3 at, Optional<Vec3> far) {
        return sort instanceof Sort wanted ? new DollyAdditions(dolly, ids).add(wanted, at, far, file()) : Optional.empty();
    }
}
