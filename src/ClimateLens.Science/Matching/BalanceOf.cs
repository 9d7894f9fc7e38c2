namespace ClimateLens.Science.Matching;

/// <summary>Works out the balance of a comparison.</summary>
internal static class BalanceOf
{
    public static IReadOnlyList<CovariateBalance> All(CovariateTable table, NearestStretches nearest, List<MatchedEvent> matched)
    {
        double[] events = Mean(table.Width, matched.Select(e => table.Row(e.Start)));
        double[] all = Mean(table.Width, nearest.Candidates.Select(c => c.Row));
        double[] chosen = Mean(table.Width, matched.Select(e => Mean(table.Width, e.Stretches.Select(table.Row))));
        return [.. table.Names.Select(name => new CovariateBalance(name, Difference(table, name, events, all), Difference(table, name, events, chosen)))];
    }

    private static double Difference(CovariateTable table, string name, double[] events, double[] others)
    {
        double[] differences = [.. table.ColumnsOf(name).Select(column => events[column] - others[column])];
        return differences.Length == 1 ? differences[0] : double.Hypot(differences[0], differences[1]);
    }

    private static double[] Mean(int width, IEnumerable<double[]> rows)
    {
        double[] sums = new double[width];
        int count = 0;
        foreach (double[] row in rows)
        {
            count++;
            for (int i = 0; i < width; i++)
            {
                sums[i] += row[i];
            }
        }

        return Array.ConvertAll(sums, sum => sum / count);
    }
}
