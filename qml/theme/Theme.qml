pragma Singleton
import QtQuick

// The two sets of colours, by day and by lamp. Text on ground, cloth or card has at least 7:1. Two colours carry a
// meaning: `worked` what the hand is at or has to catch, `calm` time that asks for nothing yet; a shape or a word always
// says the same.
QtObject {
    id: root

    property bool lamp: false

    // What things lie on: the screen, the plate under a drawing, and what can be pressed or written in.
    readonly property color ground: lamp ? "#121518" : "#F4F1E9"
    readonly property color cloth: lamp ? "#1B1F23" : "#E7E3D8"
    readonly property color card: lamp ? "#23282D" : "#FDFCF8"

    readonly property color ink: lamp ? "#F6F2EA" : "#181C20"
    readonly property color quiet: lamp ? "#CFD3D7" : "#3F4347"
    readonly property color worked: lamp ? "#FFC798" : "#712808"
    readonly property color calm: lamp ? "#8FE0D2" : "#084740"
    // Lines alone: no words are written in it.
    readonly property color pencil: lamp ? "#868D94" : "#7C7B73"
    readonly property color hair: lamp ? "#3B4147" : "#C9C4B7"
    readonly property color workedTint: lamp ? "#4A3222" : "#E6CDB9"
    readonly property color calmTint: lamp ? "#1F3F3B" : "#C3D6CE"

    // The mitred edge of a key: its line, the sides towards and away from the light, and its face while pressed.
    readonly property color keyLine: lamp ? "#8A9199" : "#6F6A5D"
    readonly property color keyLit: lamp ? "#4C545B" : "#FFFFFF"
    readonly property color keyShade: lamp ? "#14171A" : "#D3CCBD"
    readonly property color keyDown: lamp ? "#15181B" : "#DDD8CB"
    // The same of a dark key, such as Done.
    readonly property color darkLit: lamp ? "#FFFFFF" : "#5B6672"
    readonly property color darkShade: lamp ? "#B9B4A8" : "#000000"
    readonly property color darkDown: lamp ? "#DAD5CA" : "#2E343A"

    // An alert takes the whole screen in a deep red, which by lamp must not blind.
    readonly property color alertGround: lamp ? "#4A1E08" : "#712808"
    readonly property color onAlert: lamp ? "#FFE6D2" : "#FFFFFF"
    readonly property color alertLit: lamp ? "#8A5A3C" : "#A8684A"
    readonly property color alertShade: lamp ? "#1E0B02" : "#3A1302"

    // The colours of safety signs are the same in any light, and so are those of the bars of signal words, but for the
    // one that would not be seen by lamp.
    readonly property color signYellow: "#F9C22E"
    readonly property color signBlue: "#0B4F8A"
    readonly property color signRed: "#B3201B"
    readonly property color signBlack: "#111111"
    readonly property color signWhite: "#FFFFFF"
    readonly property color barDanger: "#B3201B"
    readonly property color barWarning: "#F08A1D"
    readonly property color barCaution: "#F9C22E"
    readonly property color barNotice: lamp ? "#6FB1E8" : "#0B4F8A"
}
