pragma ComponentBehavior: Bound
import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// Ten digits, the mark between whole and fraction, and one key that removes the last entry.
Grid {
    id: root

    property bool inches: false
    property double keySize: Metrics.key
    property double keyHeight: keySize
    property int legendSize: Metrics.title
    readonly property var rows: [7, 8, 9, 4, 5, 6, 1, 2, 3]

    signal digit(int number)
    signal part
    signal erased

    columns: 3
    spacing: Metrics.gap

    Repeater {
        model: root.rows

        TouchKey {
            id: digitKey

            required property int modelData

            offers: ScreenAction {
                name: "digit" + digitKey.modelData
                text: String(digitKey.modelData)
                enabled: root.visible
                onTriggered: root.digit(digitKey.modelData)
            }
            width: root.keySize
            height: root.keyHeight
            legendSize: root.legendSize
            lockout: Touch.padLockout

            // A keyboard's keys do the same; its backspace is handled with the pedal's Back.
            Shortcut {
                sequence: digitKey.offers.text
                enabled: digitKey.offers.enabled
                onActivated: digitKey.offers.trigger(digitKey)
            }
        }
    }
    TouchKey {
        id: partKey
        offers: ScreenAction {
            name: "part"
            text: root.inches ? "⁄" : "."
            hint: root.inches ? qsTr("over") : ""
            enabled: root.visible
            onTriggered: root.part()
        }
        width: root.keySize
        height: root.keyHeight
        legendSize: root.legendSize
        lockout: Touch.padLockout

        Shortcut {
            sequences: [".", ",", "/"]
            enabled: partKey.offers.enabled
            onActivated: partKey.offers.trigger(partKey)
        }
    }
    TouchKey {
        id: noughtKey
        offers: ScreenAction {
            name: "digit0"
            text: "0"
            enabled: root.visible
            onTriggered: root.digit(0)
        }
        width: root.keySize
        height: root.keyHeight
        legendSize: root.legendSize
        lockout: Touch.padLockout

        Shortcut {
            sequence: "0"
            enabled: noughtKey.offers.enabled
            onActivated: noughtKey.offers.trigger(noughtKey)
        }
    }
    TouchKey {
        offers: ScreenAction {
            name: "erase"
            text: "⌫"
            repeats: true
            enabled: root.visible
            onTriggered: root.erased()
        }
        width: root.keySize
        height: root.keyHeight
        legendSize: root.legendSize
        lockout: Touch.padLockout
    }
}
