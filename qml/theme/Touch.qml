pragma Singleton
import QtQuick

// The times, in milliseconds, that keep a sleeve or a press aimed at the old screen from acting.
QtObject {
    id: root

    property int shortestContact: 60
    property int sameKeyLockout: 350
    // A digit may come twice: "11 mm" must not wait.
    property int padLockout: 150
    property int screenGuard: 700
    property int holdBeforeRepeat: 600
    property int repeatEvery: 180
    property int farAfter: 60000
    // A timer and not the wall clock: a clock that is set back would leave every key dead.
    readonly property Timer guardTimer: Timer {
        interval: root.screenGuard
    }

    // The caller reports that a screen changed or an alert appeared.
    function guard() {
        guardTimer.restart();
    }
    function guarded(): bool {
        return guardTimer.running;
    }
}
