package unthrum.material;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import unthrum.material.Material.Form;
import unthrum.reading.Check;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.survey.StockEntry;
import unthrum.survey.Survey;

/** Reports stock of which the catalogue knows no such material, or that is counted in another way than it is sold. */
public final class StockCheck implements Check<Survey> {

    private final Supplier<Catalogue> catalogue;

    /** @param catalogue asked only where a survey names stock */
    public StockCheck(Supplier<Catalogue> catalogue) {
        this.catalogue = catalogue;
    }

    @Override
    public void check(Survey survey, Places places) {
        if (places.sound("stock")) {
            List<StockEntry> stock = survey.stock().orElse(List.of());
            for (int i = 0; i < stock.size(); i++) {
                entry(stock.get(i), "stock[" + i + "]", places);
            }
        }
    }

    private void entry(StockEntry entry, String path, Places places) {
        Optional<Material> material = catalogue.get().find(entry.material());
        if (material.isEmpty()) {
            places.problem(path + ".material", "no material '" + entry.material() + "'", "a name from the catalogue",
                    Nearest.remedy(entry.material(), catalogue.get().all().stream().map(Material::material).toList()));
        } else if (material.get().form() == Form.ROLL && entry.wholeSheets() > 0) {
            places.problem(path + ".sheets", entry.sheets().orElseThrow() + " sheets of '" + entry.material()
                    + "', which comes on a roll", "its length", "write 'length: 3 m', say, for what is left of the roll");
        } else if (material.get().form() != Form.ROLL && entry.length().isPresent()) {
            places.problem(path + ".length", "a length of '" + entry.material() + "', which comes on no roll",
                    "a number of sheets", "write 'sheets: 4', say, or 'size' for an offcut");
        }
    }
}
