import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Pieces
import Mountwright.Theme

// What the desk and the lists of pieces are put together from.
Item {
    id: root
    width: 700
    height: 700

    ProgressRule {
        id: rule
        width: 500
        done: 0
        all: 0
    }
    ScaleMark {
        id: mark
        y: 50
        pixels: 0.7
        inches: false
    }
    NowLine {
        id: line
        y: 120
        width: 600
        time: "10:14"
    }
    PieceBoard {
        id: board
        y: 160
        width: 320
        height: 520
        pieces: demo.pieces
    }
    SignalSpy {
        id: taken
        target: board
        signalName: "taken"
    }
    TestCase {
        name: "Desk"
        when: windowShown

        function test_whatIsDoneIsInkedToItsShare_data() {
            return [
                {
                    "tag": "nothing known",
                    "done": 0,
                    "all": 0,
                    "inked": 0
                },
                {
                    "tag": "a quarter",
                    "done": 24,
                    "all": 96,
                    "inked": 125
                },
                {
                    "tag": "all",
                    "done": 98,
                    "all": 98,
                    "inked": 500
                }
            ];
        }
        function test_whatIsDoneIsInkedToItsShare(data) {
            rule.all = data.all;
            rule.done = data.done;
            compare(findChild(rule, "inked").width, data.inked);
        }
        function test_theScaleIsTheLongestRoundLengthThatHasRoom_data() {
            return [
                {
                    "tag": "mm",
                    "pixels": 0.7,
                    "inches": false,
                    "length": 100
                },
                {
                    "tag": "small pieces",
                    "pixels": 3,
                    "inches": false,
                    "length": 20
                },
                {
                    "tag": "inches",
                    "pixels": 0.7,
                    "inches": true,
                    "length": 4
                },
                {
                    "tag": "no room for any",
                    "pixels": 300,
                    "inches": false,
                    "length": 10
                }
            ];
        }
        function test_theScaleIsTheLongestRoundLengthThatHasRoom(data) {
            mark.pixels = data.pixels;
            mark.inches = data.inches;
            compare(mark.length, data.length);
            const mm = data.length * (data.inches ? 25.4 : 1);
            fuzzyCompare(findChild(mark, "scaleLine").width, mm * data.pixels, 1e-6);
        }
        function test_theBoardGoesOnInWholeCardsAllToOneScale() {
            compare(board.count, 2);
            compare(board.pages, 2);
            compare([board.first, board.last], [1, 1]);
            const one = board.itemAtIndex(0);
            verify(one.height <= board.height);
            board.turn(-1);
            compare(board.page, 0);
            board.turn(1);
            compare(board.page, 1);
            compare([board.first, board.last], [2, 2]);
            const other = board.itemAtIndex(1);
            compare(other.y, board.contentY);
            compare(other.pixels, board.pixels);
            board.turn(1);
            compare(board.page, 1);
            // Two beside each other have the scale of the larger one.
            board.turn(-1);
            board.width = 640;
            compare(board.pages, 1);
            const largest = demo.pieces.largest;
            verify(largest.width * board.pixels <= board.cellWidth);
            verify(largest.height * board.pixels <= board.pictureHeight);
            board.width = 320;
        }
        function test_aCardIsOneKey() {
            wait(Touch.screenGuard);
            taken.clear();
            const card = board.itemAtIndex(0);
            mousePress(card, 30, 30);
            wait(Touch.shortestContact + 100);
            mouseRelease(card, 30, 30);
            compare(taken.count, 1);
            compare(taken.signalArguments[0][0], 0);
            compare(card.text, demo.pieces.data(demo.pieces.index(0, 0), 257));
        }
        function test_whereThereIsLittleRoomThePieceGoesBeforeTheNote() {
            line.note = "sheet 1 of 3";
            line.piece = "Heron at low water";
            line.width = 600;
            const note = findChild(line, "note");
            const piece = findChild(line, "pieceName");
            verify(note.visible);
            verify(piece.visible);
            compare(piece.x + piece.width, 600);
            line.width = note.x + piece.width;
            verify(!note.visible);
            verify(piece.visible);
            line.width = piece.width;
            verify(!piece.visible);
            verify(findChild(line, "now").visible);
        }
    }
}
