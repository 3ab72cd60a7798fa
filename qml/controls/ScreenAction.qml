import QtQuick.Templates as T

// An action of a screen, triggered by a key on the glass, a pedal or the keyboard. One that is not enabled is not
// offered, and its key is hidden.
T.Action {
    id: root

    // The place of its key: in the screen's own content, in a corner, above Done, along the head of the desk or at the
    // foot of a page; or it has no key, and only pedal and keyboard trigger it; or in the upper right corner.
    enum Place {
        Content,
        Corner,
        AboveDone,
        Head,
        Foot,
        NoKey,
        TopCorner
    }
    // The inputs that trigger it beside its key; several are joined by |. Forward and Back are the pedals.
    enum By {
        Nobody = 0,
        Enter = 1,
        Forward = 2,
        Back = 4,
        Heard = 8
    }

    // The name has to be unique on its screen.
    required property string name
    // The spoken name, needed where its text is a sign.
    property string called: text
    property string hint: ""
    // The sign drawn above the word on its key (KeySign); "" for none.
    property string sign: ""
    // The key is dark for the action expected next.
    property bool filled: false
    // The key is sunk for the one chosen among several.
    property bool chosen: false
    // The key repeats while it is held down, for stepping a value.
    property bool repeats: false
    property int place: ScreenAction.Content
    property int by: ScreenAction.Nobody
}
