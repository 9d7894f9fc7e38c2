using ClimateLens.Analysis.Reviews;

namespace ClimateLens.Reports.Data;

/// <summary>What the learned check named, a row a stretch of suspect steps or a lasting shift. [SI units of the channel]</summary>
internal static class SecondOpinionTable
{
    public static byte[] Of(SecondOpinionReport opinion)
    {
        CsvTable table = new("channel", "sensor", "kind", "start", "end", "steps", "days", "logged", "expected", "part", "difference", "differenceLow", "differenceHigh");
        foreach (LearnedSensorReport s in opinion.Sensors)
        {
            foreach (SuspectStretch stretch in s.Suspects)
            {
                table.Text(s.Channel).Text(s.Sensor).Text("suspect").Time(stretch.Start).Time(stretch.End).Number(stretch.Steps).Number(null)
                    .Number(stretch.Logged).Number(stretch.Expected).Text("").Number(stretch.Logged - stretch.Expected).Number(null).Number(null).EndRow();
            }

            if (s.Shift is { } shift)
            {
                table.Text(s.Channel).Text(s.Sensor).Text("shift").Time(shift.From).Time(shift.To).Number(null).Number(shift.Days)
                    .Number(null).Number(null).Text(shift.Part).Number(shift.Size.Value).Number(shift.Size.Low).Number(shift.Size.High).EndRow();
            }
        }

        return table.ToBytes();
    }
}
