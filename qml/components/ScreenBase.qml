import QtQuick

// A room of the house, with a door. It is made when it is entered and gone when it is left; what Done, Back and the
// pedal do in it, it says itself.
Item {
    id: root

    // Nothing is under way in it: the off time, a touch test or the far face may come up by themselves.
    property bool idle: false

    // To the screen of that name.
    signal asked(screen: string)
    // Back to where one came from.
    signal leave
    // To the bench, past all that lies between.
    signal over
    // The step on the bench is done, as far as this screen knows.
    signal stepDone

    // The Done key, Enter, and the pedal's own key for it.
    function done() {
    }
    // The Back key and Escape.
    function back() {
        leave();
    }
    function pedalForward() {
        done();
    }
    function pedalBack() {
        back();
    }
    // It is left for good.
    function closed() {
    }
    // A key, a touch or a pedal: somebody is there.
    function noticed() {
    }
}
