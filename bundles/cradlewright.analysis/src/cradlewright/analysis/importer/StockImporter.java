package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.StockFacts;
import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.FlatBar;
import cradlewright.model.stock.FoldShape;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.stock.HollowSection;
import cradlewright.model.stock.PadMaterial;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.RoundTube;
import cradlewright.model.stock.Section;
import cradlewright.model.stock.Sheet;
import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.StockItem;
import cradlewright.model.stock.TeeSection;
import cradlewright.model.stock.Timber;
import cradlewright.model.stock.TimberRail;
import cradlewright.model.stock.Tread;
import cradlewright.quantity.Position;
import java.util.Optional;

/** Reads what is kept in stock. */
final class StockImporter {

    private StockImporter() {
    }

    /** Returns the record of an item; nothing for a sheet, which carries nothing before it is folded to a section. */
    static Optional<StockFacts> item(StockItem item) {
        return item instanceof Sheet ? Optional.empty() : Optional.of(record(item));
    }

    private static StockFacts record(StockItem item) {
        if (item instanceof Section section) {
            return section(section);
        }
        if (item instanceof Steel steel) {
            return new StockFacts.Steel(id(steel), name(steel), Values.si(steel.getFy()), Values.si(steel.getFu()));
        }
        if (item instanceof Timber timber) {
            return new StockFacts.Timber(id(timber), name(timber), Values.si(timber.getFmk()), Values.si(timber.getFvk()),
                    Values.si(timber.getDensity()));
        }
        if (item instanceof BoltType bolt) {
            return new StockFacts.Bolt(id(bolt), name(bolt), Values.text(bolt.getSize()), Values.text(bolt.getGrade()),
                    !Boolean.FALSE.equals(bolt.getThreadsInShear()));
        }
        if (item instanceof CastorType castor) {
            return castor(castor);
        }
        if (item instanceof PadType pad) {
            return pad(pad);
        }
        if (item instanceof ShimType shim) {
            return new StockFacts.Shim(id(shim), name(shim), Values.si(shim.getThickness()), Values.si(shim.getLength()),
                    Values.si(shim.getWidth()), Optional.ofNullable(shim.getOnHand()));
        }
        throw noRecord(item);
    }

    private static StockFacts.Section section(Section section) {
        if (section instanceof FoldedSection folded) {
            return new StockFacts.Folded(id(folded), name(folded), shape(folded.getShape()), Values.si(folded.getHeight()),
                    Values.si(folded.getWidth()), Values.si(folded.getLip()), Values.si(folded.getThickness()),
                    Values.si(folded.getInsideRadius()), each(folded.getPoints(), StockImporter::corner));
        }
        if (section instanceof HollowSection hollow) {
            return new StockFacts.Hollow(id(hollow), name(hollow), Values.si(hollow.getHeight()), Values.si(hollow.getWidth()),
                    Values.si(hollow.getThickness()));
        }
        if (section instanceof RoundTube tube) {
            return new StockFacts.Tube(id(tube), name(tube), Values.si(tube.getDiameter()), Values.si(tube.getThickness()));
        }
        if (section instanceof FlatBar bar) {
            return new StockFacts.Flat(id(bar), name(bar), Values.si(bar.getHeight()), Values.si(bar.getWidth()));
        }
        if (section instanceof TeeSection tee) {
            return new StockFacts.Tee(id(tee), name(tee), Values.si(tee.getFlangeWidth()), Values.si(tee.getFlangeThickness()),
                    Values.si(tee.getWebHeight()), Values.si(tee.getWebThickness()));
        }
        if (section instanceof TimberRail rail) {
            return new StockFacts.TimberRail(id(rail), name(rail), Values.si(rail.getHeight()), Values.si(rail.getWidth()),
                    Identity.reference(rail.getTimber()));
        }
        throw noRecord(section);
    }

    private static IllegalArgumentException noRecord(StockItem item) {
        return new IllegalArgumentException("no record for stock of the class " + item.eClass().getName());
    }

    private static StockFacts.SheetCorner corner(Position position) {
        double[] xyz = position.si();
        return new StockFacts.SheetCorner(xyz[1], xyz[2]);
    }

    /** Returns the outline; when nobody named it, the one that is drawn by its corners, of which there may be none. */
    private static StockFacts.Shape shape(FoldShape shape) {
        if (shape == null) {
            return StockFacts.Shape.POLYLINE;
        }
        return switch (shape) {
            case CHANNEL -> StockFacts.Shape.CHANNEL;
            case LIPPED_CHANNEL -> StockFacts.Shape.LIPPED_CHANNEL;
            case ANGLE -> StockFacts.Shape.ANGLE;
            case ZED -> StockFacts.Shape.ZED;
            case HAT -> StockFacts.Shape.HAT;
            case POLYLINE -> StockFacts.Shape.POLYLINE;
        };
    }

    private static StockFacts.CastorType castor(CastorType castor) {
        return new StockFacts.CastorType(id(castor), name(castor), Values.rating(castor.getRatedLoad()),
                Values.si(castor.getWheelDiameter()), Values.si(castor.getLead()), tread(castor.getTread()),
                Values.si(castor.getStiffness()), Values.si(castor.getContactArea()),
                Values.celsius(castor.getTemperatureLimit()), Values.si(castor.getMass()));
    }

    private static Optional<StockFacts.Tread> tread(Tread tread) {
        return Optional.ofNullable(tread).map(given -> switch (given) {
            case RUBBER_SOFT -> StockFacts.Tread.RUBBER_SOFT;
            case RUBBER_HARD -> StockFacts.Tread.RUBBER_HARD;
            case POLYURETHANE -> StockFacts.Tread.POLYURETHANE;
            case POLYAMIDE -> StockFacts.Tread.POLYAMIDE;
            case STEEL -> StockFacts.Tread.STEEL;
        });
    }

    private static StockFacts.Pad pad(PadType pad) {
        return new StockFacts.Pad(id(pad), name(pad), material(pad.getMaterial()), Values.si(pad.getLength()),
                Values.si(pad.getWidth()), Values.si(pad.getThickness()), Values.si(pad.getModulus()),
                Values.si(pad.getStiffness()), Values.si(pad.getStressLimit()), Values.si(pad.getStrainLimit()),
                Values.celsius(pad.getTemperatureLimit()));
    }

    private static StockFacts.Material material(PadMaterial material) {
        if (material == null) {
            return StockFacts.Material.OTHER;
        }
        return switch (material) {
            case CORK -> StockFacts.Material.CORK;
            case RUBBER -> StockFacts.Material.RUBBER;
            case FELT -> StockFacts.Material.FELT;
            case OTHER -> StockFacts.Material.OTHER;
        };
    }
}
