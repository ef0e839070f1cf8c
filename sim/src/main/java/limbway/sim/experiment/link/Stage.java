package limbway.sim.experiment.link;

import limbway.sim.experiment.Progress;

/** A part of a search that lives in a layout, told under its own name. */
record Stage(String words, SearchProgress progress) implements Progress {

    @Override
    public void finished(int done, int total) {
        progress.at(words, done, total);
    }

    @Override
    public boolean wantsStop() {
        return progress.wantsStop();
    }
}
