package unthrum.cli;

import java.io.*;
import java.util.*;
import java.nio.charset.StandardCharsets;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import unthrum.facts.*;
import unthrum.survey.*;
import unthrum.reading.*;
import org.drools.core.common.*;
import org.drools.base.rule.*;
import org.drools.base.definitions.rule.impl.RuleImpl;

public final class Main {
    public static void main(String[] a) throws Exception {
        String res = "META-INF/kie/unthrum/unthrum/drools-model";
        List<Model> models = new ArrayList<>();
        try (BufferedReader r = new BufferedReader(new InputStreamReader(Main.class.getClassLoader().getResourceAsStream(res), StandardCharsets.UTF_8))) {
            for (String l; (l = r.readLine()) != null; ) { System.out.println(l);
                if (l.startsWith("Drools-Model-Version") ) continue;
                models.add((Model) Class.forName(l).getDeclaredConstructor().newInstance());
            }
        }
        KieBase kb = KieBaseBuilder.createKieBaseFromModel(models);
        KieSession s = kb.newKieSession();
        s.insert(new Threshold("damping/short-span", 0.25, Dimension.LENGTH));
        s.insert(new Threshold("damping/knee", 0.25, Dimension.SHARE));
        s.insert(new Bay("roof", 1, .5, .4, .4, .2, Tap.RINGS, 10, 20, 1, .5, 10, 1, 1, Set.of("tap")));
        s.insert(new Bay("roof", 2, .5, .4, .4, .2, Tap.DULL, 10, 20, 1, .5, 10, 1, 1, Set.of("tap")));
        s.insert(new Bay("roof", 3, .5, .4, .4, .2, Tap.NOT_TAPPED, 10, 20, 1, .5, 10, 1, 1, Set.of("tap")));
        s.insert(new Setting("roof", Wetness.DRY, true, Traffic.NONE, true, NoiseSource.NONE, Set.of()));
        s.fireAllRules();
        for (var o : s.getObjects()) System.out.println(o);
        for (var p : kb.getKiePackages()) for (var r : p.getRules()) {
            RuleImpl ri = (RuleImpl) r;
            System.out.println(ri.getName() + " " + ri.getMetaData());
            dump(ri.getLhs(), 1);
        }
        TruthMaintenanceSystem tms = TruthMaintenanceSystemFactory.get().getOrCreateTruthMaintenanceSystem((org.drools.core.common.ReteEvaluator) s);
        for (var fh : s.getFactHandles()) {
            InternalFactHandle h = (InternalFactHandle) fh;
            System.out.println(h.getObject() + " -> " + h.getEqualityKey());
        }
    }
    static void dump(Object o, int d) {
        System.out.println("  ".repeat(d) + o.getClass().getSimpleName() + " " + o);
        if (o instanceof GroupElement g) g.getChildren().forEach(c -> dump(c, d + 1));
        if (o instanceof Pattern p) { for (var c : p.getConstraints()) System.out.println("  ".repeat(d + 1) + c.getClass() + " " + c + " " + Arrays.toString(c.getRequiredDeclarations()) + " " + c.getType());
            System.out.println("  ".repeat(d+1)+p.getDeclarations()+" "+p.getDeclaration()); }
    }
}
