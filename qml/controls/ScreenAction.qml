import QtQuick.Templates as T

// What can be done on a screen, whoever asks for it: a key on the glass, a pedal, the keyboard. One that is not enabled
// is not offered, and its key is not there.
T.Action {
    id: root

    // Where its key stands: with the screen's own content, in a corner, above Done, along the head of the desk or at
    // the foot of a page; or no key has it, and it is asked for by pedal and keyboard alone.
    enum Place {
        Content,
        Corner,
        AboveDone,
        Head,
        Foot,
        NoKey
    }
    // Who asks for it beside its key; several are joined by |. Forward and Back are the pedals.
    enum By {
        Nobody = 0,
        Enter = 1,
        Forward = 2,
        Back = 4,
        Heard = 8
    }

    // One of its kind on its screen.
    required property string name
    // What it is called where its text is a sign.
    property string called: text
    property string hint: ""
    // What is expected next, or what holds of several: its key is dark.
    property bool filled: false
    // Held down it acts again and again: for stepping a value.
    property bool repeats: false
    property int place: ScreenAction.Content
    property int by: ScreenAction.Nobody
}
