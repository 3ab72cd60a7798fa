import QtQuick
import QtTest
import Mountwright.Components

// The stages of a piece as a rule, each standing in a form of its own.
Item {
    id: root
    width: 1000
    height: 200

    StageStrip {
        id: strip
        width: 900
        stages: []
    }
    TestCase {
        name: "Stages"
        when: windowShown

        // The ink of one stage alone.
        function inkOf(standing) {
            strip.stages = [
                {
                    "name": "Cut",
                    "standing": standing
                }
            ];
            waitForRendering(root);
            const image = grabImage(root);
            let ink = 0;
            for (let x = 0; x < strip.width; ++x)
                for (let y = 0; y < strip.height; ++y)
                    ink += image.red(x, y) < 128 ? 1 : 0;
            return ink;
        }
        function test_everyStandingIsDrawnUnlikeTheOthers() {
            const inks = [strip.ahead, strip.now, strip.drying, strip.done, strip.begun].map(standing => inkOf(standing));
            for (let one = 0; one < inks.length; ++one)
                for (let other = 0; other < one; ++other)
                    verify(Math.abs(inks[one] - inks[other]) > 10, inks.join(" "));
            // What was begun lies between what is ahead and what is done.
            verify(inks[strip.ahead] < inks[strip.begun] && inks[strip.begun] < inks[strip.done], inks.join(" "));
        }
        function test_whereTheMakerIsIsSaidInWords() {
            strip.stages = [
                {
                    "name": "Cut",
                    "standing": strip.done
                },
                {
                    "name": "Colour",
                    "standing": strip.now
                }
            ];
            compare(strip.said, "2 of 2, Colour");
        }
        function test_theyTakeTheWholeWidthWithoutOverlap() {
            strip.stages = [0, 1, 2, 3, 4, 0, 0].map(standing => ({
                        "name": "Cut",
                        "standing": standing
                    }));
            waitForRendering(root);
            let end = 0;
            for (let i = 0; i < 7; ++i) {
                const block = findChild(strip, "stage" + i);
                verify(block.x >= end, i);
                end = block.x + block.width;
            }
            verify(Math.abs(end - strip.width) <= 1);
        }
        function test_whileNothingIsWorkedWhatDriesIsSaid() {
            strip.stages = [
                {
                    "name": "Cut",
                    "standing": strip.done
                },
                {
                    "name": "Colour",
                    "standing": strip.drying
                }
            ];
            compare(strip.said, "dries: Colour");
        }
    }
}
