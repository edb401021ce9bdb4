#!/nowhere/python3
print("{}")
