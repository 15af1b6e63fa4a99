package curewindow.search;

import java.util.List;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.Function;
import org.mozilla.javascript.NativeArray;
import org.mozilla.javascript.RhinoException;
import org.mozilla.javascript.ScriptableObject;

/**
 * A JavaScript engine that cannot reach Java, files or the network. It belongs to the thread that
 * made it. A mistake in a script is a {@link RhinoException}, which knows its line.
 */
final class Engine implements AutoCloseable {

  private final Context context;
  private final ScriptableObject scope;

  Engine() {
    context = Context.enter();
    context.setLanguageVersion(Context.VERSION_ECMASCRIPT);
    // Each script runs once, so that turning it into classes first would only take time.
    context.setInterpretedMode(true);
    scope = context.initSafeStandardObjects();
  }

  void run(String script, String name) {
    context.evaluateString(scope, script, name, 1, null);
  }

  /** What {@code lookup.NAME(arguments)} returns, as text. */
  String text(String name, Object... arguments) {
    return Context.toString(call(name, arguments));
  }

  /** What {@code lookup.NAME(arguments)} returns, as a list of texts. */
  List<String> texts(String name, Object... arguments) {
    Object list = call(name, arguments);
    if (!(list instanceof NativeArray array)) {
      throw Context.reportRuntimeError("lookup." + name + " returns no list");
    }
    return java.util.Arrays.stream(array.toArray()).map(Context::toString).toList();
  }

  /** A JavaScript array of texts or arrays. */
  Object array(List<?> values) {
    return context.newArray(scope, values.toArray());
  }

  private Object call(String name, Object... arguments) {
    Object lookup = scope.get("lookup", scope);
    if (lookup instanceof ScriptableObject object
        && object.get(name, object) instanceof Function function) {
      return function.call(context, scope, object, arguments);
    }
    throw Context.reportRuntimeError("there is no function lookup." + name);
  }

  @Override
  public void close() {
    Context.exit();
  }
}
