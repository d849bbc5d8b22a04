package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.derive.PanelFacts;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.material.Material;
import unthrum.material.Material.DampingData;
import unthrum.physics.Band;
import unthrum.physics.Bay;
import unthrum.physics.CoveredMode;
import unthrum.physics.Mode;
import unthrum.physics.ReferenceTable;
import unthrum.physics.ReferenceTable.Row;
import unthrum.physics.Sheet;
import unthrum.physics.ShellModes;
import unthrum.physics.Support;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;

@DisplayName("Partly covered bays: what is told holds what finite elements say (patches.csv, complex modulus)")
class PatchedBayTest {

    private static final double MEASURED = 0.0001;

    static Stream<Row> table() {
        return ReferenceTable.rows("patches.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("table")
    @DisplayName("the frequency after treatment lies in the told range, which is no wider than 1.15 times its edges'")
    void frequency(Row row) {
        Band after = response(row).after();
        assertThat(row.number("f1_treated_hz")).isBetween(after.lower(), after.upper());
        double span = edge(row, Support.CLAMPED_SLIDING) - edge(row, Support.HINGED_SLIDING);
        assertThat(after.upper() - after.lower()).isBetween(span, 1.15 * span);
    }

    @ParameterizedTest
    @MethodSource("table")
    @DisplayName("the loss factor lies in the told range")
    void lossFactor(Row row) {
        Range told = response(row).room().lossFactor();
        assertThat(row.number("loss_factor_complex1") + MEASURED).isBetween(told.low(), told.high());
    }

    static BayEffect.Response response(Row row) {
        Workbench bench = Workbench.with("body: van, drive: diesel, use: daily", "road drumming",
                "{panel: bay, zone: side, skin: {metal: " + row.text("material") + ", gauge: "
                        + row.text("thickness_mm") + " mm}, size: [" + row.text("a_mm") + " mm, " + row.text("b_mm")
                        + " mm], shape: {curve: flat}, ribs: none, decay: [{bay: 1, loss factor: 0.0001}]}");
        PanelFacts facts = bench.panel("bay");
        double share = row.number("coverage_pct") / 100;
        Laid laid = new Laid(sheet(row), List.of(new Patch(Place.of("bay"), share,
                share * facts.the(Panel.class).area())));
        return bench.effect(new Treated(facts, new Layup(List.of(laid)), Set.of())).bays().get(0).response().value();
    }

    /** A sheet as the row has it, alike at all temperatures and frequencies. */
    private static Material sheet(Row row) {
        Material m = Workbench.material("butyl-2");
        double core = row.number("core_thickness_mm");
        double foil = row.number("foil_thickness_mm");
        Quantity modulus = new Quantity(row.number("core_shear_storage_mpa") * 1e6, Dimension.STIFFNESS);
        Quantity loss = new Quantity(row.number("core_loss_factor"), Dimension.NUMBER);
        DampingData data = m.damping().orElseThrow();
        DampingData flat = new DampingData(new Quantity(foil / 1000, Dimension.LENGTH), data.facingModulus(), data.at(),
                data.shift(), data.points().stream().map(p -> new DampingData.Point(p.temperature(), modulus, loss))
                .toList());
        double density = (core * row.number("core_density_kg_m3") + foil * row.number("foil_density_kg_m3")) / 1000;
        return new Material(m.material(), m.is(), m.layer(), new Quantity((core + foil) / 1000, Dimension.LENGTH),
                new Quantity(density, Dimension.SURFACE_DENSITY), m.serviceFrom(), m.serviceTo(), m.bondsFrom(),
                m.cell(), m.burnRate(), m.bonding(), m.removable(), m.form(), m.size(), m.inPack(), m.price(),
                m.conductivity(), m.emissivity(), m.bearsWear(), m.runsOneWay(), m.closes(), m.springModulus(),
                Optional.of(flat), m.published());
    }

    /** The frequency on edges of one kind by the formula alone, without its error. */
    private static double edge(Row row, Support support) {
        double gauge = row.number("thickness_mm") / 1000;
        Sheet skin = row.text("material").equals("steel") ? Sheet.steel(gauge) : Sheet.aluminium(gauge);
        Bay bay = Bay.flat(row.number("a_mm") / 1000, row.number("b_mm") / 1000);
        Mode mode = ShellModes.lowest(skin.skin(), bay, support).value();
        CoveredMode covered = CoveredMode.of(mode, bay, support.clamped(), row.number("coverage_pct") / 100, 0.3);
        DampingSheet sheet = new DampingSheet(sheet(row), 2700);
        return mode.frequency() * Math.sqrt(covered.stiffness(sheet.on(skin), sheet.core(20, 200)).stored()
                / (1 + sheet.mass() / skin.surfaceDensity() * covered.movement()));
    }
}
