import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The first questions: units, distance, sound, where to begin. Each can be passed over and set again later.
ScreenBase {
    id: root

    required property SettingsViewModel settings
    required property DesignViewModel design
    property int page: 0
    readonly property int pages: 4

    backAction.text: page === 0 ? qsTr("Skip") : qsTr("Back")
    backAction.place: ScreenAction.Corner
    doneAction.enabled: page < pages - 1

    // One question, with the answers it accepts.
    component Page: Column {
        id: one

        required property int number
        property int shown: 0
        required property string question
        property string why: ""
        // Shown as the bench shows it, between what is said and the answers.
        default property alias answers: keys.data
        property alias sample: shownAs.data

        visible: shown === number
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - 2 * x
        x: Metrics.mm(14)
        spacing: Metrics.mm(6)

        Words {
            width: one.width
            text: one.question
            font.bold: true
            font.pixelSize: Metrics.act
        }
        Words {
            width: one.width
            visible: text !== ""
            text: one.why
        }
        Column {
            id: shownAs
            width: one.width
            visible: children.length > 0
        }
        Flow {
            id: keys
            width: one.width
            spacing: Metrics.gap
        }
    }
    component Answer: TouchKey {
        width: Metrics.mm(54)
        height: Metrics.corner
    }

    Words {
        id: heading
        x: Metrics.mm(14)
        y: Metrics.mm(6)
        text: qsTr("Mountwright, %1 of %2").arg(root.page + 1).arg(root.pages)
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
    Item {
        anchors.top: heading.bottom
        anchors.bottom: passOver.top
        width: parent.width

        Page {
            number: 0
            shown: root.page
            question: qsTr("What do you measure in?")

            Answer {
                offers: ScreenAction {
                    name: "millimetres"
                    text: qsTr("Millimetres")
                    hint: qsTr("316.5 mm")
                    chosen: !root.settings.inches
                    enabled: root.page === 0
                    onTriggered: {
                        root.settings.setInches(false);
                        root.page = 1;
                    }
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "inches"
                    text: qsTr("Inches")
                    hint: qsTr("12 15/32 in")
                    chosen: root.settings.inches
                    enabled: root.page === 0
                    onTriggered: {
                        root.settings.setInches(true);
                        root.page = 1;
                    }
                }
            }
        }
        Page {
            number: 1
            shown: root.page
            question: qsTr("Stand at the bench. Can you read this with ease?")
            why: qsTr("Letters for %1, from your eyes to the tablet.").arg(root.settings.distanceText)
            sample: [
                Words {
                    text: qsTr("Cut the window")
                    font.bold: true
                    font.pixelSize: Metrics.act
                },
                StackedNumber {
                    whole: root.settings.inches ? "12" : "316.5"
                    numerator: root.settings.inches ? "15" : ""
                    denominator: root.settings.inches ? "32" : ""
                    unit: root.settings.inches ? qsTr("in") : qsTr("mm")
                }
            ]

            Answer {
                offers: ScreenAction {
                    name: "nearer"
                    text: qsTr("Smaller")
                    enabled: root.page === 1
                    onTriggered: root.settings.nearer()
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "farther"
                    text: qsTr("Larger")
                    enabled: root.page === 1
                    onTriggered: root.settings.farther()
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "readable"
                    text: qsTr("I can read it")
                    filled: true
                    enabled: root.page === 1
                    onTriggered: root.page = 2
                }
            }
        }
        Page {
            number: 2
            shown: root.page
            question: qsTr("Can you hear an alert from where you work?")
            why: root.settings.sound !== "" ? root.settings.sound : qsTr("Turn the tablet up, take headphones out, then sound it.")

            Answer {
                offers: ScreenAction {
                    name: "tryOut"
                    text: qsTr("Sound it")
                    enabled: root.page === 2 && root.settings.sound === ""
                    onTriggered: root.settings.soundAsked()
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "hearsIt"
                    text: root.settings.sound !== "" ? qsTr("Go on") : qsTr("I hear it")
                    sign: root.settings.sound !== "" ? "" : "heard"
                    filled: true
                    enabled: root.page === 2
                    onTriggered: root.page = 3
                }
            }
        }
        Page {
            number: 3
            shown: root.page
            question: qsTr("Where shall we begin?")
            why: qsTr("The piece to try is a chart under two boards, with a paper band and scattered leaf. Every step can be tried on it, and nothing is spoiled.")

            Answer {
                offers: ScreenAction {
                    name: "demo"
                    text: qsTr("A piece to try")
                    filled: true
                    enabled: root.page === 3 && root.settings.hasDemo
                    onTriggered: {
                        if (root.settings.takeDemo()) {
                            root.settings.endIntroduction();
                            root.over();
                        }
                    }
                }
            }
            Answer {
                offers: ScreenAction {
                    name: "firstPiece"
                    text: qsTr("A piece of mine")
                    filled: !root.settings.hasDemo
                    enabled: root.page === 3
                    onTriggered: {
                        root.settings.endIntroduction();
                        if (root.design.beginFresh())
                            root.asked("design");
                    }
                }
            }
        }
    }
    Words {
        anchors.left: passOver.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(6)
        anchors.verticalCenter: passOver.verticalCenter
        text: root.settings.refusal !== "" ? root.settings.refusal : qsTr("All of it can be set again at the desk, under This tablet.")
        color: root.settings.refusal !== "" ? Theme.worked : Theme.quiet
        font.pixelSize: Metrics.label
    }
    TouchKey {
        id: passOver
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legendSize: Metrics.label
        offers: root.backAction
    }

    function back() {
        if (page > 0) {
            page -= 1;
        } else {
            settings.endIntroduction();
            over();
        }
    }
    // Enter and the pedal choose the answer that is offered.
    function done() {
        page += 1;
    }
}
