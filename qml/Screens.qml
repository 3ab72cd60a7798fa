import QtQml
import Mountwright.ViewModels

// Every screen, a row each: its name, its file, the screen to which Back leads ("" for the one the maker came from),
// and the parts of the desk it is given. A file is read when its screen is entered for the first time, so that the
// start does not wait for screens nobody has opened yet.
QtObject {
    id: root

    required property Desk desk

    component Row: QtObject {
        required property string name
        required property string file  // below Mountwright, without its extension
        property string on: "bench"
        property var given: ({})
        readonly property url source: "qrc:/qt/qml/Mountwright/%1.qml".arg(file)
    }

    readonly property list<QtObject> rows: [
        Row {
            name: "bench"
            file: "Bench/BenchScreen"
            on: ""
            given: ({
                "bench": root.desk.bench,
                "shelf": root.desk.shelf,
                "watch": root.desk.watch,
                "off": root.desk.off,
                "meanwhile": root.desk.meanwhile
            })
        },
        Row {
            name: "more"
            file: "Bench/MorePage"
            given: ({
                "bench": root.desk.bench,
                "watch": root.desk.watch,
                "settings": root.desk.settings,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "look"
            file: "Bench/LookPage"
            given: ({
                "look": root.desk.bench.look,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "waits"
            file: "Bench/WaitsPage"
            given: ({
                "places": root.desk.places,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "test"
            file: "Bench/LookPage"
            on: "waits"
            given: ({
                "watch": root.desk.watch,
                "look": root.desk.places.look,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "faults"
            file: "Bench/FaultsPage"
            given: ({
                "bench": root.desk.bench,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "mend"
            file: "Bench/MendPage"
            given: ({
                "bench": root.desk.bench,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "far"
            file: "FarFace/FarFace"
            given: ({
                "bench": root.desk.bench,
                "shelf": root.desk.shelf,
                "watch": root.desk.watch
            })
        },
        Row {
            name: "made"
            file: "Made/MadeArea"
            given: ({
                "made": root.desk.made,
                "bench": root.desk.bench,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "room"
            file: "Room/RoomScreen"
            on: ""
            given: ({
                "room": root.desk.room,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "off"
            file: "OffTime/OffTimeScreen"
            given: ({
                "off": root.desk.off,
                "watch": root.desk.watch,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "jobs"
            file: "Jobs/JobsScreen"
            given: ({
                "watch": root.desk.watch,
                "jobs": root.desk.jobs,
                "settings": root.desk.settings
            })
        },
        Row {
            name: "job"
            file: "Jobs/JobPage"
            on: "jobs"
            given: ({
                "watch": root.desk.watch,
                "jobs": root.desk.jobs,
                "settings": root.desk.settings,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "cutting"
            file: "Cutting/CuttingScreen"
            on: ""
            given: ({
                "watch": root.desk.watch,
                "cutting": root.desk.cutting,
                "shelf": root.desk.shelf
            })
        },
        Row {
            name: "pieces"
            file: "Pieces/PiecesScreen"
            given: ({
                "watch": root.desk.watch,
                "pieces": root.desk.pieces,
                "design": root.desk.design
            })
        },
        Row {
            name: "piece"
            file: "Pieces/PiecePage"
            on: "pieces"
            given: ({
                "watch": root.desk.watch,
                "pieces": root.desk.pieces,
                "renewal": root.desk.renewal,
                "design": root.desk.design
            })
        },
        Row {
            name: "renewal"
            file: "Pieces/RenewalPage"
            on: "piece"
            given: ({
                "watch": root.desk.watch,
                "renewal": root.desk.renewal
            })
        },
        Row {
            name: "record"
            file: "Record/RecordScreen"
            on: "piece"
            given: ({
                "watch": root.desk.watch,
                "record": root.desk.record,
                "camera": root.desk.camera
            })
        },
        Row {
            name: "design"
            file: "Design/DesignScreen"
            on: "pieces"
            given: ({
                "design": root.desk.design,
                "watch": root.desk.watch
            })
        },
        Row {
            name: "stock"
            file: "Stock/StockScreen"
            given: ({
                "watch": root.desk.watch,
                "stock": root.desk.stock
            })
        },
        Row {
            name: "appearance"
            file: "Appearance/AppearanceScreen"
            on: "stock"
            given: ({
                "watch": root.desk.watch,
                "appearance": root.desk.appearance,
                "camera": root.desk.camera
            })
        },
        Row {
            name: "settings"
            file: "Settings/SettingsScreen"
            given: ({
                "watch": root.desk.watch,
                "settings": root.desk.settings,
                "room": root.desk.room
            })
        },
        Row {
            name: "welcome"
            file: "Welcome/WelcomeScreen"
            given: ({
                "settings": root.desk.settings,
                "design": root.desk.design
            })
        }
    ]
}
