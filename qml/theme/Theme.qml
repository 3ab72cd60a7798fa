pragma Singleton
import QtQuick

// The two sets of colours. Text on its ground has at least 7:1.
QtObject {
    id: root

    property bool lamp: false

    readonly property color paper: lamp ? "#14171A" : "#F7F5EF"
    readonly property color card: lamp ? "#1E2226" : "#FFFFFF"
    readonly property color ink: lamp ? "#F2EFE8" : "#1B1F23"
    readonly property color quiet: lamp ? "#A9AFB5" : "#505458"
    readonly property color worked: lamp ? "#F2A872" : "#7A3410"
    readonly property color calm: lamp ? "#7FD6C7" : "#0E5A52"
    readonly property color pencil: lamp ? "#7C838A" : "#8A8D90"
    readonly property color rule: lamp ? "#5A6066" : "#B9B6AC"

    // An alert takes the whole screen in the colour of what is worked.
    readonly property color alertGround: worked
    readonly property color onAlert: lamp ? "#14171A" : "#FFFFFF"

    // The colours of safety signs are the same in any light.
    readonly property color signYellow: "#F9C22E"
    readonly property color signBlue: "#0B4F8A"
    readonly property color signRed: "#B3201B"
    readonly property color signBlack: "#111111"
    readonly property color signWhite: "#FFFFFF"
}
