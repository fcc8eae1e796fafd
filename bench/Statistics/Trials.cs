using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Statistics;

/// <summary>Invented trials of a known model: abilities N(0, 1.2²), levels spread evenly from −2 to 2, one choice in five at random.</summary>
internal static class Trials
{
    /// <summary>One trial at a time, as a log has them.</summary>
    public static ResponseData Of(int pupilCount, int trialsEach, int levelCount, int seed)
    {
        var random = new Random(seed);
        var trials = new List<ResponseTrial>(pupilCount * trialsEach);
        for (var pupil = 0; pupil < pupilCount; pupil++)
        {
            var ability = 1.2 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            for (var trial = 0; trial < trialsEach; trial++)
            {
                // Most try a level near their ability.
                var near = (int)Math.Round((Math.Clamp(ability, -2, 2) + 2) / 4 * (levelCount - 1)) + random.Next(-1, 2);
                var level = random.Next(5) == 0 ? random.Next(levelCount) : Math.Clamp(near, 0, levelCount - 1);
                var difficulty = -2 + 4.0 * level / (levelCount - 1);
                trials.Add(ResponseTrial.Single(pupil, level, 0, random.NextDouble() < 1 / (1 + Math.Exp(difficulty - ability))));
            }
        }
        return new ResponseData(
            [.. Enumerable.Repeat(new ResponsePupil(), pupilCount)],
            [.. Enumerable.Range(0, levelCount).Select(level => new ResponseLevel(level))],
            trials);
    }
}
