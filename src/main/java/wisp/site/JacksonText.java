package wisp.site;

import io.javalin.json.JsonMapper;
import java.lang.reflect.Type;

/** Gives JSON trees to Javalin as their own text, so that nothing depends on how objects would be mapped. */
final class JacksonText implements JsonMapper {
    @Override
    public String toJsonString(Object tree, Type type) {
        return tree.toString();
    }
}
