#!/usr/bin/env python3
"""Judges walks and shortest paths on the real atlas by networkx, a reference library.

Usage: networkx_check.py PROGRAM   (PROGRAM writes what dump.cpp says)
"""
import itertools
import json
import subprocess
import sys

import networkx as nx

data = json.loads(subprocess.run([sys.argv[1]], check=True, capture_output=True).stdout)
graph = nx.Graph()
graph.add_nodes_from(range(data["nodes"]))
for a, b, weight in data["links"]:
    if graph.has_edge(a, b):  # parallel links: weights add up, the shortest counts for paths
        graph[a][b]["weight"] += weight
        graph[a][b]["length"] = min(graph[a][b]["length"], 1 / weight)
    else:
        graph.add_edge(a, b, weight=weight, length=1 / weight)

faults = []
for number, walk in enumerate(data["walks"]):
    start = {node: value for node, value in enumerate(walk["start"]) if value > 0}
    theirs = nx.pagerank(graph, alpha=1 - data["restart"], personalization=start, weight="weight", tol=1e-14, max_iter=2000)
    ours = walk["walk"]
    worst = max(abs(theirs[node] - ours[node]) for node in graph)
    if worst > 1e-8:
        faults.append(f"walk {number}: differs by {worst}")
    order = sorted(graph, key=lambda node: -ours[node])
    least_above, upper = 2.0, 0
    for node in order:
        while ours[order[upper]] > ours[node] + 2e-8:
            least_above = min(least_above, theirs[order[upper]])
            upper += 1
        if theirs[node] >= least_above:
            faults.append(f"walk {number}: another rank at node {node}")

for path in data["paths"]:
    try:
        ways = nx.shortest_simple_paths(graph, path["from"], path["to"], weight="length")
        theirs = [nx.path_weight(graph, way, "length") for way in itertools.islice(ways, 3)]
    except nx.NetworkXNoPath:
        theirs = []
    if len(theirs) != len(path["lengths"]) or any(abs(a - b) > 1e-9 for a, b in zip(theirs, path["lengths"])):
        faults.append(f"paths {path['from']} to {path['to']}: {path['lengths']}, networkx {theirs}")

print(f"{len(data['walks'])} walks, {len(data['paths'])} pairs of places, networkx {nx.__version__}")
for fault in faults:
    print(fault, file=sys.stderr)
sys.exit(1 if faults or not data["walks"] or not data["paths"] else 0)
