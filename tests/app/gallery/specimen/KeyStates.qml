import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The bench's keys in every standing, and the desk's.
Column {
    id: root

    spacing: Metrics.mm(3)

    Row {
        spacing: Metrics.mm(6)

        Told {
            told: "at rest"

            TouchKey {
                width: Metrics.corner
                height: Metrics.corner
                offers: ScreenAction {
                    name: "rest"
                    text: "Back"
                    sign: "back"
                }
            }
        }
        Told {
            told: "pressed, or chosen"

            TouchKey {
                width: Metrics.corner
                height: Metrics.corner
                offers: ScreenAction {
                    name: "sunk"
                    text: "Back"
                    sign: "back"
                    chosen: true
                }
            }
        }
        Told {
            told: "expected next"

            TouchKey {
                width: Metrics.corner
                height: Metrics.corner
                offers: ScreenAction {
                    name: "filled"
                    text: "Done"
                    sign: "done"
                    filled: true
                }
            }
        }
        Told {
            told: "not now"

            TouchKey {
                width: Metrics.corner
                height: Metrics.corner
                stays: true
                offers: ScreenAction {
                    name: "notNow"
                    text: "Done"
                    sign: "done"
                    enabled: false
                }
            }
        }
        Told {
            told: "the keyboard is at it"

            Item {
                width: Metrics.corner + Metrics.mm(1)
                height: Metrics.corner

                KeyFace {
                    x: Metrics.mm(1)
                    width: Metrics.corner
                    height: Metrics.corner
                    pointed: true

                    KeySign {
                        anchors.centerIn: parent
                        sign: "back"
                        width: height
                        height: Metrics.mm(11)
                    }
                }
            }
        }
    }
    Row {
        spacing: Metrics.mm(6)

        Told {
            told: "on the bench: 25 mm high"

            BenchKey {
                offers: ScreenAction {
                    name: "bench"
                    text: "Number"
                    hint: "2 of 5"
                }
            }
        }
        Told {
            told: "at the desk"
            readonly property double distance: Metrics.deskDistance

            DeskKey {
                offers: ScreenAction {
                    name: "desk"
                    text: "Record and care"
                }
            }
        }
        Told {
            told: "chosen"
            readonly property double distance: Metrics.deskDistance

            DeskKey {
                offers: ScreenAction {
                    name: "deskChosen"
                    text: "Face"
                    chosen: true
                }
            }
        }
        Told {
            told: "a line to write in"
            readonly property double distance: Metrics.deskDistance

            TextEntry {
                width: Metrics.mm(40)
                text: "museum board"
            }
        }
    }
}
