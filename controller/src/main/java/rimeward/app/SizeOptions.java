package rimeward.app;

import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import rimeward.sizing.Input;

/** Gives {@code rimeward size} one option for each number of the sheet, so that names, limits and assumptions stand in one place. */
final class SizeOptions implements IModelTransformer {

    @Override
    public CommandSpec transform(CommandSpec spec) {
        for (Input input : Input.values()) {
            spec.addOption(OptionSpec.builder(input.option())
                    .paramLabel("N")
                    .type(String.class)
                    .description(help(input))
                    .build());
        }
        return spec;
    }

    private static String help(Input input) {
        String unit = input.unit().isEmpty() ? "" : input.unit() + ": ";
        String usual = input.usual()
                .map(one -> "; without it " + Plain.number(one.value()) + " (" + one.from() + ")")
                .orElse("");
        return (unit + input.remedy() + usual).replace("%", "%%");
    }
}
