pragma ComponentBehavior: Bound
import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// Ten digits, the mark between whole and fraction, and one key that takes the last back.
Grid {
    id: root

    property bool inches: false
    property double keySize: Metrics.key
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

            objectName: "digit" + modelData
            legend: String(modelData)
            width: root.keySize
            height: root.keySize
            legendSize: root.legendSize
            lockout: Touch.padLockout
            onActed: root.digit(modelData)

            // A keyboard's keys do what these do; its backspace is the pedal's affair.
            Shortcut {
                sequence: digitKey.legend
                enabled: root.visible
                onActivated: root.digit(digitKey.modelData)
            }
        }
    }
    TouchKey {
        objectName: "part"
        legend: root.inches ? "⁄" : "."
        hint: root.inches ? qsTr("over") : ""
        width: root.keySize
        height: root.keySize
        legendSize: root.legendSize
        lockout: Touch.padLockout
        onActed: root.part()

        Shortcut {
            sequences: [".", ",", "/"]
            enabled: root.visible
            onActivated: root.part()
        }
    }
    TouchKey {
        objectName: "digit0"
        legend: "0"
        width: root.keySize
        height: root.keySize
        legendSize: root.legendSize
        lockout: Touch.padLockout
        onActed: root.digit(0)

        Shortcut {
            sequence: "0"
            enabled: root.visible
            onActivated: root.digit(0)
        }
    }
    TouchKey {
        objectName: "erase"
        legend: "⌫"
        width: root.keySize
        height: root.keySize
        legendSize: root.legendSize
        lockout: Touch.padLockout
        repeats: true
        onActed: root.erased()
    }
}
