package wisp.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wisp.indicator.Selection;
import wisp.question.Question;
import wisp.question.Questions;
import wisp.records.Records;

/** Prints the whole answer to a question as JSON, the same as the HTTP interface gives. */
@Command(name = "answer", description = "Print the answer to a question as JSON.", mixinStandardHelpOptions = true)
final class Answer implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "QUESTION", description = "navels, season or pens")
    private String name;

    @Mixin
    private DataOption data;

    @Mixin
    private SelectionOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws JsonProcessingException {
        try (Records records = data.open()) {
            Questions questions = new Questions(records.definitions());
            Question question = questions
                    .named(name)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(),
                            "There is no question " + name + ". Choose among: " + String.join(", ", questions.names())
                                    + "."));
            Selection selection = options.read(records);
            String json = new JsonMapper()
                    .writerWithDefaultPrettyPrinter()
                    .writeValueAsString(question.answer(records.cohort(selection.asOf()), selection));
            spec.commandLine().getOut().println(json);
            spec.commandLine().getOut().flush();
            return 0;
        }
    }
}
