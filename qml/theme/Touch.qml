pragma Singleton
import QtQuick

// What keeps a sleeve or a press aimed at the old screen from acting. Milliseconds.
QtObject {
    id: root

    property int shortestContact: 60
    property int sameKeyLockout: 350
    property int screenGuard: 700
    property int farAfter: 60000
    property double guardedUntil: 0

    // A screen changed or an alert appeared.
    function guard() {
        guardedUntil = Date.now() + screenGuard;
    }
    function guarded(): bool {
        return Date.now() < guardedUntil;
    }
}
