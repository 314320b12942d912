package wisp.log;

/** The store itself finds its file damaged. */
final class DamagedLog extends LogFailure {
    DamagedLog(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
