package org.ullage.examples.flink;

import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.flink.api.common.functions.RichMapFunction;
import org.apache.flink.api.common.state.CheckpointListener;

/**
 * Passes lines on and dies in one subtask, once, after some lines and a completed checkpoint: then there is something to go back to and
 * something that was sized in vain.
 */
final class FailsOnce extends RichMapFunction<String, String> implements CheckpointListener {

    private static final long serialVersionUID = 1L;

    /** Outlives the subtask, which is made anew; all run in one process. */
    private static final AtomicBoolean FAILED = new AtomicBoolean();

    private final int subtask;
    private final int atLeast;
    private transient int passed;
    private transient boolean checkpointed;

    FailsOnce(int subtask, int atLeast) {
        this.subtask = subtask;
        this.atLeast = atLeast;
        FAILED.set(false);
    }

    static boolean hasFailed() {
        return FAILED.get();
    }

    @Override
    public String map(String line) throws InterruptedException {
        boolean here = getRuntimeContext().getTaskInfo().getIndexOfThisSubtask() == subtask;
        if (here && !FAILED.get()) {
            // Slow, so that there is a checkpoint before the piece of the file is at its end.
            Thread.sleep(1);
            passed++;
            if (checkpointed && passed > atLeast) {
                FAILED.set(true);
                throw new IllegalStateException("killed on purpose after " + passed + " lines");
            }
        }
        return line;
    }

    @Override
    public void notifyCheckpointComplete(long checkpoint) {
        checkpointed = passed > 0;
    }
}
